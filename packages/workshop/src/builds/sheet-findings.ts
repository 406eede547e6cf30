import {
  type CapacityUse,
  capacityUse,
  checkPrerequisites,
  type Finding,
  type Model,
} from "@buildproof/prerequisites";
import type { Site } from "../core/site";
import type { Catalogue, CatalogueRule } from "./catalogue-rows";
import type { FactsWith } from "./facts-with";
import { chosenIn, findingHeadline, namedItems, nameOf, type Situation } from "./finding-words";
import { bestOffers, type FixOffer, offerOfFix, offerOfRemoval } from "./fix-offer";
import type { Chosen, Ledger } from "./ledger";
import { type Remedy, remedyOf } from "./remedy";
import { soundFixes } from "./sound-fixes";
import { asSystemCode, type SystemCode, systemForLink } from "./systems";

/** Something missing, short or contradictory, as the build sheet shows it. */
export type SheetFinding = {
  readonly rule: string;
  readonly kind: Finding["kind"];
  readonly system: SystemCode;
  readonly headline: string;
  readonly because: string;
  readonly source: string;
  /** A safety finding is never overridden. */
  readonly safety: boolean;
  /** The chosen items that bring it about. */
  readonly causedBy: readonly { readonly code: string; readonly name: string }[];
  readonly fixes: readonly FixOffer[];
  /** Where it is put right when no item does it. */
  readonly remedy: Remedy | null;
};

export type CheckedBuild = {
  readonly catalogue: Catalogue;
  readonly site: Site;
  readonly chosen: readonly Chosen[];
  readonly ledger: Ledger;
  readonly model: Model;
  readonly facts: Readonly<Record<string, number | string>>;
  /** The facts as they would be with other items: their torque is that of their own forecast. */
  readonly factsWith: FactsWith;
  readonly barred: readonly string[];
  readonly uses: readonly CapacityUse[];
};

/** Everything wrong with a build, each with its reason and its best fixes. */
export function sheetFindings(build: CheckedBuild): readonly SheetFinding[] {
  const codes = build.chosen.map(({ code }) => code);
  const { findings } = checkPrerequisites(build.model, codes, build.facts, build.barred);
  const situation: Situation = { catalogue: build.catalogue, chosen: new Set(codes), facts: build.facts };
  return findings.map((finding) => {
    const rule = build.catalogue.rules.find(({ code }) => code === finding.rule);
    const use = build.uses.find((each) => each.rule === finding.rule);
    return {
      rule: finding.rule,
      kind: finding.kind,
      system: systemOf(finding, rule, situation),
      headline: findingHeadline(finding, rule, use, situation),
      because: rule?.because ?? "Only one of these has its place on the vehicle.",
      source: rule?.source ?? "the workshop's catalogue",
      safety: rule?.safety ?? false,
      causedBy: finding.items.map((code) => ({ code, name: nameOf(code, situation) })),
      fixes: fixesOf(build, finding, rule, situation),
      remedy: remedyOf(rule),
    };
  });
}

function fixesOf(
  build: CheckedBuild,
  finding: Finding,
  rule: CatalogueRule | undefined,
  situation: Situation,
): readonly FixOffer[] {
  if (rule?.kind === "excludes" || finding.kind === "group") {
    const against = rule?.kind === "excludes" ? chosenIn(rule.then, situation) : [];
    return [...new Set([...against, ...finding.items])].map((code) => offerOfRemoval(build, code));
  }
  const codes = build.chosen.map(({ code }) => code);
  return bestOffers(
    soundFixes(build, codes, finding).map((fix) => ({
      ...offerOfFix(build, fix),
      headroomAfter: headroomWith(build, finding.rule, fix.add),
    })),
  );
}

function headroomWith(build: CheckedBuild, rule: string, add: readonly string[]): number | null {
  const codes = [...build.chosen.map(({ code }) => code), ...add];
  return capacityUse(build.model, codes).find((use) => use.rule === rule)?.headroom ?? null;
}

function systemOf(finding: Finding, rule: CatalogueRule | undefined, situation: Situation): SystemCode {
  if (rule?.kind === "capacity") return systemForLink(rule.link);
  const named = rule ? namedItems(rule.then) : finding.items;
  const missing = rule?.kind === "needs" ? named.find((code) => !situation.chosen.has(code)) : named[0];
  const code = missing ?? finding.items[0];
  const item = situation.catalogue.items.find((each) => each.code === code);
  return asSystemCode(item?.system ?? "operations");
}
