import { checkPrerequisites, type Finding, type Fix, fixesFor, type Model } from "@buildproof/prerequisites";
import type { FactsWith } from "./facts-with";

const FIXES_LOOKED_AT = 8;

type Searched = { readonly model: Model; readonly barred: readonly string[]; readonly factsWith: FactsWith };

/**
 * The fixes of a finding that hold on the torque which the engine would make with them. The search judges every rule
 * by the torque of the items it starts from; a fix that makes too much itself is none.
 */
export function soundFixes(
  { model, factsWith, barred }: Searched,
  codes: readonly string[],
  finding: Finding,
): readonly Fix[] {
  const facts = factsWith(codes);
  const options = { barred: barred.filter((code) => !codes.includes(code)), limit: FIXES_LOOKED_AT };
  const brokenRules = (selected: readonly string[]) =>
    checkPrerequisites(model, selected, factsWith(selected)).findings.map(({ rule }) => rule);
  return fixesFor(model, codes, facts, finding, options).filter(({ add }) => {
    const after = [...codes, ...add];
    if (factsWith(after).crankTorqueNm === facts.crankTorqueNm) return true;
    const broken = new Set(brokenRules(codes));
    return brokenRules(after).every((rule) => broken.has(rule));
  });
}
