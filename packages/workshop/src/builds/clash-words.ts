import type { Completion } from "@buildproof/prerequisites";
import type { Catalogue } from "./catalogue-rows";
import type { FixOffer } from "./fix-offer";
import { itemByCode } from "./ledger";
import { type Remedy, remedyOf } from "./remedy";

/** Chosen items that cannot be completed together, and from which nothing can be left out. */
export type SheetClash = {
  readonly sentence: string;
  /** The rules that make it so, in words a customer could read. */
  readonly reasons: readonly {
    readonly rule: string;
    readonly because: string;
    readonly source: string;
    readonly safety: boolean;
  }[];
  readonly members: readonly ClashMember[];
  readonly remedies: readonly Remedy[];
};

export type ClashMember = {
  readonly code: string;
  readonly name: string;
  /** What completes the build without it; null when nothing does either, or none was found in time. */
  readonly without: FixOffer | null;
  /** What there is to say where nothing completes the build without it either. */
  readonly otherwise: string;
};

/** The clash in words. `members` come in the order of the clash. */
export function clashWords(
  catalogue: Catalogue,
  clash: Completion["clash"],
  forecastRules: ReadonlyMap<string, string>,
  members: readonly ClashMember[],
): SheetClash {
  const rules = [...new Set(clash.rules.map((rule) => forecastRules.get(rule) ?? rule))];
  const stored = rules.flatMap((code) => catalogue.rules.find((rule) => rule.code === code) ?? []);
  const groups = clash.groups.flatMap((code) => catalogue.groups.find((group) => group.code === code) ?? []);
  const byForecast = new Set(forecastRules.values());
  return {
    sentence: sentenceOf(clash.chosen.map((code) => itemByCode(catalogue, code).name)),
    reasons: [
      ...stored.map(({ code: rule, because, source, safety }) => ({
        rule,
        because: byForecast.has(rule) ? `By the forecast of what would be added: ${because}` : because,
        source,
        safety,
      })),
      ...groups.map(({ code: rule, name, pick }) => ({
        rule,
        because: `${name}: ${pickWords[pick]}.`,
        source: "the workshop's catalogue",
        safety: false,
      })),
    ],
    members,
    remedies: stored.flatMap((rule) => remedyOf(rule) ?? []),
  };
}

const pickWords = {
  "at-most-one": "only one has its place on the vehicle",
  "exactly-one": "exactly one must be chosen",
  "at-least-one": "at least one must be chosen",
} as const;

function sentenceOf(names: readonly string[]): string {
  if (names.length === 0) return "What is open on this vehicle is closed by nothing in the catalogue.";
  if (names.length === 1)
    return `${names[0]} asks for what nothing in the catalogue can give on this vehicle as it is recorded.`;
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)} cannot be completed together, whatever is added.`;
}
