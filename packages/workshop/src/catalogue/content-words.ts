import { type CurrencyCode, formatMoney, minorUnits } from "@buildproof/units";
import { baseName } from "../builds/fact-words";
import { asSystemCode, linkName, systems } from "../builds/systems";
import { amountWords } from "./amount-words";
import type { CatalogueNames } from "./catalogue-names";
import { findComponent } from "./components/components";
import type { FigureField } from "./components/figure-field";
import { typedFigures } from "./components/typed-figures";
import { listed } from "./listed";
import type { ContentOf, PartKind } from "./part-content";
import { ruleSentence } from "./rule-sentence";

/** One thing that is said about a part: what it is called, and what it is, both in words. */
export type Said = { readonly label: string; readonly words: string };

export type WordsFor = {
  readonly names: CatalogueNames;
  readonly currency: CurrencyCode;
  /** What the workshop pays is for those who may see margins. */
  readonly showsCost: boolean;
  /** Prices are not for the floor. */
  readonly showsPrice: boolean;
};

/** A part of the catalogue as a list of what is said about it, in a fixed order; what is empty is left out. */
export function contentWords<Part extends PartKind>(
  part: Part,
  content: ContentOf<Part>,
  on: WordsFor,
): readonly Said[] {
  const words = wordsOf[part] as (content: ContentOf<Part>, on: WordsFor) => readonly Said[]; // One entry per part.
  return words(content, on).filter((said) => said.words !== "");
}

type Words = { readonly [Part in PartKind]: (content: ContentOf<Part>, on: WordsFor) => readonly Said[] };

const say = (label: string, words: string): Said => ({ label, words });
const yes = (isSo: boolean) => (isSo ? "yes" : "");
const some = (count: number, unit: string) => (count === 0 ? "" : `${count} ${unit}`);

export const pickWords = {
  "at-most-one": "at most one",
  "exactly-one": "exactly one",
  "at-least-one": "at least one",
} as const;

const wordsOf: Words = {
  item: (item, on) => itemWords(item, on),
  group: ({ name, pick, items }, { names }) => [
    say("Name", name),
    say("Of these", pickWords[pick]),
    say("Items", items.map(names.item).join("; ")),
  ],
  rule: (rule, { names }) => [
    say("Rule", ruleSentence(rule, names)),
    say("Why", rule.because),
    say("Source", rule.source),
    say("Safety", rule.safety ? "never overridden" : "a manager may override it"),
    say("Vehicles", rule.models.length === 0 ? "all" : listed(rule.models.map(names.model), "and")),
    ...(rule.kind === "capacity" ? capacityWords(rule, names) : []),
  ],
  package: (bundle, { names }) => [
    say("Name", bundle.name),
    say("Outcome", bundle.outcome),
    say("Vehicles", bundle.models.map(names.model).join("; ")),
    say("Always in it", bundle.items.map(names.item).join("; ")),
    ...bundle.choices.map(({ name, pick, items }) =>
      say(`Choice “${name}”`, `${pickWords[pick]} of ${items.map(names.item).join("; ")}`),
    ),
    say("May be added", bundle.options.map(names.item).join("; ")),
    say("Promise", bundle.promise ? promiseWords(bundle.promise) : ""),
    say("Assumes", bundle.assumptions.join(" ")),
    say("Does not include", bundle.exclusions.join(" ")),
    say("Cautions", bundle.cautions.join(" ")),
  ],
  operation: ({ name, hours, rate, access, place, skill, stage }, { names }) => [
    say("Name", name),
    say("Own work", `${Number(hours)} h`),
    say("Rate", rate),
    say("Access work", access.map(names.access).join("; ")),
    say("Where", place),
    say("Skill", skill),
    say("Stage", stage),
  ],
  access: ({ name, hours, rate, needs }, { names }) => [
    say("Name", name),
    say("Hours", `${Number(hours)} h`),
    say("Rate", rate),
    say("After", needs.map(names.access).join("; ")),
  ],
};

function itemWords(
  item: ContentOf<"item">,
  { names, currency, showsCost, showsPrice }: WordsFor,
): readonly Said[] {
  const money = (minor: number) => formatMoney(minorUnits(minor), currency);
  const component = findComponent(item.component);
  const typed = component ? typedFigures(component, item.figures) : {};
  const system = systems.find(({ code }) => code === asSystemCode(item.system));
  return [
    say("Name", item.name),
    say("System", system?.name ?? item.system),
    say("Kind", item.kind),
    say("What it is", component && component.code !== "" ? component.name : item.component),
    ...(showsPrice ? [say("Price without tax", money(item.priceMinor))] : []),
    ...(showsCost ? [say("Cost", money(item.costMinor))] : []),
    say("Maker", item.maker),
    say("Supplier", item.supplier),
    say("Lead time", some(item.leadDays, "days")),
    say("Mass", some(item.massKg, "kg")),
    say("Warranty", some(item.warrantyMonths, "months")),
    say("Serial number recorded", yes(item.serialised)),
    say("Fitted once only", yes(item.oneUse)),
    say("Can be returned", item.returnable ? "yes" : "no"),
    ...(component?.fields ?? []).map((field) =>
      say(field.label, figureWords(field, typed[field.path] ?? "")),
    ),
    say("Fits", item.fits.length === 0 ? "all vehicles" : item.fits.map(names.model).join("; ")),
    say("Work that comes with it", item.operations.map(names.operation).join("; ")),
    say("Note", item.note),
  ];
}

function figureWords(field: FigureField, typed: string): string {
  if (field.kind === "choice") return field.choices.find(({ code }) => code === typed)?.name ?? typed;
  return typed === "" ? "" : `${typed} ${field.unit}`.trim();
}

function capacityWords(
  rule: Extract<ContentOf<"rule">, { readonly kind: "capacity" }>,
  names: CatalogueNames,
): readonly Said[] {
  const amounts = (of: typeof rule.supply) =>
    Object.entries(of)
      .map(([code, amount]) => `${names.item(code)} ${amountWords(amount, rule.unit)}`)
      .join("; ");
  return [
    say("Link of the chain", linkName(rule.link)),
    say("The vehicle gives", baseName(rule.baseFact)),
    say("Supplied by", amounts(rule.supply)),
    say("Asked by", amounts(rule.demand)),
    say("Kept in reserve", some(rule.reservePct, "%")),
  ];
}

function promiseWords(promise: NonNullable<ContentOf<"package">["promise"]>): string {
  const tow = promise.towKg === undefined ? "" : `tows ${amountWords(promise.towKg, "kg")}`;
  if (!("lowKw" in promise)) return tow;
  const { lowKw, highKw, referenceCondition, remedy, boostKPa } = promise;
  const power = `${lowKw} to ${highKw} kW at the hubs, ${referenceCondition}`;
  const boost = boostKPa === undefined ? "" : `at ${amountWords(boostKPa, "kPa")} of boost`;
  return [power, boost, tow, remedy].filter((words) => words !== "").join("; ");
}
