import { checkPrerequisites } from "@buildproof/prerequisites";
import type { Catalogue } from "./catalogue-rows";
import type { ReadBuild } from "./read-build-sheet";

/** Items that cannot be fitted beside this one: choosing it replaces them. */
export function rivalsOf(catalogue: Catalogue, code: string): readonly string[] {
  return catalogue.groups
    .filter(({ pick, items }) => pick !== "at-least-one" && items.includes(code))
    .flatMap(({ items }) => items.filter((other) => other !== code));
}

/**
 * The rule that an item would break by being added, or null: judged on the torque that the engine would make with it,
 * not on today's. Its rivals are taken as leaving, and so is what is named.
 */
export function excludedBecause(
  sheet: ReadBuild,
  code: string,
  leaving: readonly string[] = [],
): string | null {
  const { checked } = sheet;
  const gone = [...rivalsOf(sheet.catalogue, code), ...leaving];
  const before = sheet.chosen.map((each) => each.code).filter((each) => !gone.includes(each));
  const excludesIn = (codes: readonly string[]) =>
    checkPrerequisites(checked.model, codes, checked.factsWith(codes)).findings.filter(
      ({ kind }) => kind === "excludes",
    );
  const broken = new Set(excludesIn(before).map(({ rule }) => rule));
  return excludesIn([...before, code]).find(({ rule }) => !broken.has(rule))?.because ?? null;
}
