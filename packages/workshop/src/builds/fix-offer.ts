import type { Fix } from "@buildproof/prerequisites";
import { type MinorUnits, minorUnits } from "@buildproof/units";
import type { Site } from "../core/site";
import type { Catalogue } from "./catalogue-rows";
import { type Chosen, itemByCode, type Ledger, ledgerOf } from "./ledger";

export type FixLabel = "cheapest" | "soonest" | "fewest hours";

/** A change of the build that clears a finding, with what it adds to the whole build. */
export type FixOffer = {
  readonly labels: readonly FixLabel[];
  readonly add: readonly { readonly code: string; readonly name: string }[];
  readonly remove: readonly { readonly code: string; readonly name: string }[];
  /** Added to the total, tax and labour included; negative when it takes away. */
  readonly grossMinor: MinorUnits;
  readonly labourHours: number;
  readonly dynoHours: number;
  /** Until its slowest part is here. */
  readonly leadDays: number;
  /** For a link that is short: supply ÷ demand − 1 of that link with the fix; else null. */
  readonly headroomAfter: number | null;
  /** Other findings that it makes worse. */
  readonly worsens: readonly string[];
};

type Build = {
  readonly catalogue: Catalogue;
  readonly site: Site;
  readonly chosen: readonly Chosen[];
  readonly ledger: Ledger;
};

/** What a fix adds to this build: access work that is open already costs nothing again. */
export function offerOfFix(build: Build, fix: Fix): FixOffer {
  return offer(build, fix.add, [], fix.worsens);
}

export function offerOfRemoval(build: Build, code: string): FixOffer {
  return offer(build, [], [code], []);
}

/** What a change of the choice comes to that is neither fix nor removal alone. */
export function offerOfChange(build: Build, add: readonly string[], remove: readonly string[]): FixOffer {
  return offer(build, add, remove, []);
}

function offer(
  { catalogue, site, chosen, ledger }: Build,
  add: readonly string[],
  remove: readonly string[],
  worsens: readonly string[],
): FixOffer {
  const added = add.map((code) => ({ code, quantity: 1 }));
  const after = ledgerOf(catalogue, site, [...chosen.filter(({ code }) => !remove.includes(code)), ...added]);
  const named = (code: string) => ({ code, name: itemByCode(catalogue, code).name });
  return {
    labels: [],
    add: add.map(named),
    remove: remove.map(named),
    grossMinor: minorUnits(after.total.grossMinor - ledger.total.grossMinor),
    labourHours: difference(after.labourHours, ledger.labourHours),
    dynoHours: difference(after.dynoHours, ledger.dynoHours),
    leadDays: ledgerOf(catalogue, site, added).leadDays,
    headroomAfter: null,
    worsens,
  };
}

/** Hours are kept to hundredths; the difference of two such numbers is one again. */
function difference(after: number, before: number): number {
  return Math.round((after - before) * 100) / 100;
}

/** The cheapest, the soonest and the one with the fewest hours; one fix may be all three. */
export function bestOffers(offers: readonly FixOffer[]): readonly FixOffer[] {
  const hours = (offer: FixOffer) => offer.labourHours + offer.dynoHours;
  const wanted: readonly (readonly [FixLabel, (offer: FixOffer) => number])[] = [
    ["cheapest", (offer) => offer.grossMinor],
    ["soonest", (offer) => offer.leadDays],
    ["fewest hours", hours],
  ];
  const labels = new Map<FixOffer, FixLabel[]>();
  for (const [label, measure] of wanted) {
    const best = offers.toSorted((a, b) => measure(a) - measure(b) || a.grossMinor - b.grossMinor)[0];
    if (best) labels.set(best, [...(labels.get(best) ?? []), label]);
  }
  return [...labels].map(([offer, held]) => ({ ...offer, labels: held }));
}
