import { checkPrerequisites } from "@buildproof/prerequisites";
import type { MinorUnits } from "@buildproof/units";
import { findingHeadline, type Situation } from "../../builds/finding-words";
import type { CheckedBuild } from "../../builds/sheet-findings";

/** What of a checked build a change of the catalogue could alter. */
export type Tried = {
  /** By rule: what is wrong, in one line. */
  readonly findings: ReadonlyMap<string, string>;
  /** Chosen, but no longer sold. */
  readonly notSold: readonly string[];
  readonly grossMinor: MinorUnits;
};

export function triedFindings({
  checked,
  catalogue,
}: {
  checked: CheckedBuild;
  catalogue: CheckedBuild["catalogue"];
}): Tried {
  const codes = checked.chosen.map(({ code }) => code);
  const chosen = new Set(codes);
  const situation: Situation = { catalogue, chosen, facts: checked.facts };
  const { findings } = checkPrerequisites(checked.model, codes, checked.facts, checked.barred);
  return {
    findings: new Map(
      findings.map((finding) => {
        const rule = catalogue.rules.find(({ code }) => code === finding.rule);
        const use = checked.uses.find((each) => each.rule === finding.rule);
        return [finding.rule, findingHeadline(finding, rule, use, situation)];
      }),
    ),
    notSold: catalogue.items
      .filter(({ code, retired }) => retired && chosen.has(code))
      .map(({ name }) => name),
    grossMinor: checked.ledger.total.grossMinor,
  };
}

export type TriedDifference = {
  /** What would be wrong that is not now, or wrong otherwise. */
  readonly gains: readonly string[];
  /** What is wrong now and would not be. */
  readonly loses: readonly string[];
  readonly beforeMinor: number;
  readonly afterMinor: number;
};

/** Null where nothing differs. */
export function triedDifference(before: Tried, after: Tried): TriedDifference | null {
  const gains = [...after.findings].filter(([rule, line]) => before.findings.get(rule) !== line);
  const loses = [...before.findings].filter(([rule]) => !after.findings.has(rule));
  const gone = after.notSold.filter((name) => !before.notSold.includes(name));
  if (gains.length + loses.length + gone.length === 0 && before.grossMinor === after.grossMinor) return null;
  return {
    gains: [...gains.map(([, line]) => line), ...gone.map((name) => `No longer sold: ${name}`)],
    loses: loses.map(([, line]) => line),
    beforeMinor: before.grossMinor,
    afterMinor: after.grossMinor,
  };
}
