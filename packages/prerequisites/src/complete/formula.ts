import { compareDecimals, exactDecimal } from "@buildproof/units";
import type { Condition } from "../model/model";
import type { Situation } from "../model/situation";
import type { Literal } from "./encoding";

/** A condition whose facts are known, with "not" pushed down to the items. */
export type Formula =
  | boolean
  | { readonly literal: Literal }
  | { readonly all: readonly Formula[] }
  | { readonly any: readonly Formula[] };

type Known = { readonly literalOf: (item: string) => Literal; readonly factOf: Situation["factOf"] };

/** The condition, or its opposite, as a formula over items. */
export function formulaOf(condition: Condition, holds: boolean, known: Known): Formula {
  if ("item" in condition) {
    const literal = known.literalOf(condition.item);
    return { literal: holds ? literal : -literal };
  }
  if ("fact" in condition) {
    const reached = compareDecimals(known.factOf(condition.fact), exactDecimal(condition.atLeast)) >= 0;
    return reached === holds;
  }
  if ("not" in condition) return formulaOf(condition.not, !holds, known);
  const isAll = "all" in condition;
  const parts = (isAll ? condition.all : condition.any).map((part) => formulaOf(part, holds, known));
  // The opposite of "all hold" is "any fails".
  return isAll === holds ? allOf(parts) : anyOf(parts);
}

export function allOf(parts: readonly Formula[]): Formula {
  if (parts.some((part) => part === false)) return false;
  const open = parts.filter((part) => part !== true);
  const [only] = open;
  if (only === undefined) return true;
  return open.length === 1 ? only : { all: open };
}

export function anyOf(parts: readonly Formula[]): Formula {
  if (parts.some((part) => part === true)) return true;
  const open = parts.filter((part) => part !== false);
  const [only] = open;
  if (only === undefined) return false;
  return open.length === 1 ? only : { any: open };
}
