import { type Completion, checkPrerequisites, type Measure, type Search } from "@buildproof/prerequisites";
import type { MinorUnits } from "@buildproof/units";
import { addDays } from "../core/site-date";
import { type ClashMember, clashWords, type SheetClash } from "./clash-words";
import type { CompletionBuild } from "./completion-build";
import { type FixOffer, offerOfChange } from "./fix-offer";
import { itemByCode, ledgerOf } from "./ledger";
import type { ReadBuild } from "./read-build-sheet";
import { type Settled, settleCompletion } from "./settle-completion";

/** One way to complete a build. None of those shown is worse than another in price, hours and date at once. */
export type BuildAlternative = {
  readonly bestFor: readonly Measure[];
  readonly offer: FixOffer;
  /** Of the whole build with it, tax included. */
  readonly grossMinor: MinorUnits;
  readonly labourHours: number;
  readonly dynoHours: number;
  readonly leadDays: number;
  /** The first day on which all parts can be here, if they are ordered today. */
  readonly partsBy: string;
  /** Whether it is proven that none is better in what it is best for. */
  readonly isProven: boolean;
};

export type BuildAlternatives = {
  readonly alternatives: readonly BuildAlternative[];
  /** What stays open even with them, because nothing closes it. */
  readonly leavesOpen: readonly string[];
  readonly clash: SheetClash | null;
  /** False when the time was up before anything was found. */
  readonly isAnswered: boolean;
};

const measures: readonly Measure[] = ["price", "hours", "leadDays"];
const MOST_LEFT_OPEN = 4;

/** The best ways to complete a build, and why there is none where choices clash. */
export async function alternativesOf(sheet: ReadBuild, search: Search): Promise<BuildAlternatives> {
  let build = completionBuild(sheet);
  let cheapest = await settleCompletion(build, "price", search);
  const clash = cheapest.status === "impossible" ? await explained(sheet, build, cheapest, search) : null;
  const leavesOpen: string[] = [];
  while (cheapest.status === "impossible" && leavesOpen.length < MOST_LEFT_OPEN) {
    const open = ruleToLeaveOpen(sheet, cheapest);
    if (open === null) break;
    leavesOpen.push(open);
    build = { ...build, leaveOpen: new Set(leavesOpen) };
    cheapest = await settleCompletion(build, "price", search);
  }
  const byAdded = new Map<string, BuildAlternative>();
  for (const measure of measures) {
    const settled = measure === "price" ? cheapest : await settleCompletion(build, measure, search);
    if (settled.add === null) continue;
    const key = settled.add.join(" ");
    const same = byAdded.get(key);
    byAdded.set(key, {
      ...(same ?? alternative(sheet, settled.add)),
      bestFor: [...(same?.bestFor ?? []), measure],
      isProven: settled.isProven && (same?.isProven ?? true),
    });
  }
  const alternatives = [...byAdded.values()].filter(({ offer }) => offer.add.length > 0);
  return {
    alternatives,
    leavesOpen: leavesOpen.map((code) => becauseOf(sheet, code)),
    clash,
    isAnswered: cheapest.status !== "time-limit" || cheapest.add !== null,
  };
}

/** A build as the search is asked about it. What the vehicle is to do (a fuel, a trailer) is its owner's to say. */
function completionBuild({ catalogue, site, vehicle, chosen, checked }: ReadBuild): CompletionBuild {
  const isChosen = new Set(chosen.map(({ code }) => code));
  const duties = catalogue.items.filter(({ code, kind }) => kind === "duty" && !isChosen.has(code));
  return {
    catalogue,
    site,
    modelCode: vehicle.modelCode,
    chosen: chosen.map(({ code }) => code),
    barred: [...new Set([...checked.barred, ...duties.map(({ code }) => code)])],
    leaveOpen: new Set(),
    factsWith: checked.factsWith,
  };
}

function alternative(
  { catalogue, site, checked, today }: ReadBuild,
  add: readonly string[],
): Omit<BuildAlternative, "bestFor" | "isProven"> {
  const all = [...checked.chosen, ...add.map((code) => ({ code, quantity: 1 }))];
  const { total, labourHours, dynoHours, leadDays } = ledgerOf(catalogue, site, all);
  const offer = offerOfChange(checked, add, []);
  const { grossMinor } = total;
  return { offer, grossMinor, labourHours, dynoHours, leadDays, partsBy: addDays(today, leadDays) };
}

/** Of a clash, the rule to go on without: safety last, and one that is broken already before one that is not. */
function ruleToLeaveOpen(
  { catalogue, checked }: ReadBuild,
  { clash, forecastRules }: Settled,
): string | null {
  const rules = [...clash.groups, ...clash.rules].map((rule) => forecastRules.get(rule) ?? rule);
  const codes = checked.chosen.map(({ code }) => code);
  const broken = new Set(
    checkPrerequisites(checked.model, codes, checked.facts).findings.map(({ rule }) => rule),
  );
  const rank = (code: string) =>
    (catalogue.rules.some((rule) => rule.code === code && rule.safety) ? 2 : 0) + (broken.has(code) ? 0 : 1);
  return rules.toSorted((a, b) => rank(a) - rank(b))[0] ?? null;
}

function becauseOf({ catalogue }: ReadBuild, code: string): string {
  const because = catalogue.rules.find((rule) => rule.code === code)?.because;
  return because ?? `${catalogue.groups.find((group) => group.code === code)?.name ?? code}.`;
}

/** The clash with, for each chosen item in it, what would complete the build without it. */
async function explained(
  sheet: ReadBuild,
  build: CompletionBuild,
  { clash, forecastRules }: Settled,
  search: Search,
): Promise<SheetClash> {
  const members: ClashMember[] = [];
  for (const code of clash.chosen) members.push(await member(sheet, build, code, search));
  return clashWords(sheet.catalogue, clash, forecastRules, members);
}

async function member(
  sheet: ReadBuild,
  build: CompletionBuild,
  code: string,
  search: Search,
): Promise<ClashMember> {
  const { name } = itemByCode(sheet.catalogue, code);
  const chosen = build.chosen.filter((each) => each !== code);
  const barred = [...build.barred, code];
  const settled = await settleCompletion({ ...build, chosen, barred }, "price", search);
  if (settled.add) {
    return { code, name, without: offerOfChange(sheet.checked, settled.add, [code]), otherwise: "" };
  }
  return { code, name, without: null, otherwise: whyNotEither(sheet, settled.clash, settled.status) };
}

function whyNotEither(
  { catalogue }: ReadBuild,
  { chosen }: Completion["clash"],
  status: Completion["status"],
): string {
  if (status !== "impossible") return "What is possible without it could not be found in time.";
  const names = chosen.map((code) => itemByCode(catalogue, code).name);
  return names.length === 0
    ? "Without it the vehicle still asks for what nothing can give."
    : `Without it ${names.join(" and ")} still cannot be completed.`;
}
