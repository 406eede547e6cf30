import { compareDecimals, exactDecimal } from "@buildproof/units";
import type { Condition } from "./model";
import type { Situation } from "./situation";

export type Test = (in_: Situation) => boolean;

/** Turns a condition into a test once, so that its decimals are read once. */
export function conditionTest(condition: Condition): Test {
  if ("item" in condition) return ({ selected }) => selected.has(condition.item);
  if ("fact" in condition) {
    const least = exactDecimal(condition.atLeast);
    return ({ factOf }) => compareDecimals(factOf(condition.fact), least) >= 0;
  }
  if ("all" in condition) {
    const parts = condition.all.map(conditionTest);
    return (situation) => parts.every((part) => part(situation));
  }
  if ("any" in condition) {
    const parts = condition.any.map(conditionTest);
    return (situation) => parts.some((part) => part(situation));
  }
  const inner = conditionTest(condition.not);
  return (situation) => !inner(situation);
}

/** The items a condition names, in the order written, each once. */
export function namedItems(condition: Condition | undefined): readonly string[] {
  const names = new Set<string>();
  const visit = (part: Condition): void => {
    if ("item" in part) names.add(part.item);
    else if ("all" in part) part.all.forEach(visit);
    else if ("any" in part) part.any.forEach(visit);
    else if ("not" in part) visit(part.not);
  };
  if (condition) visit(condition);
  return [...names];
}
