import type { Condition } from "@buildproof/prerequisites";
import type { ContentOf } from "../part-content";
import { ruleSentence } from "../rule-sentence";
import { type Cell, json, number, oneOf, perhaps, text, wholeNumber, yesNo } from "./cell";
import { codes } from "./list-cell";
import { column, type Flat, type PartTable } from "./part-table";

type Rule = ContentOf<"rule">;
type Capacity = Extract<Rule, { kind: "capacity" }>;
type Conditional = Exclude<Rule, Capacity>;

const condition: Cell<Condition | undefined> = json('{"item":"charge-cooler"} or {"all":[…]}');
const amounts: Cell<Capacity["supply"] | undefined> = json('{"hp-pump-upgrade":42}');

/** What only capacities have, and what only the others have. */
const ofCapacity = ["quantity", "unit", "link", "baseFact", "supply", "demand", "reservePct"] as const;
const ofCondition = ["when", "then"] as const;

const capacity = <Value>(get: (rule: Capacity) => Value) => {
  return (rule: Rule): Value | undefined => (rule.kind === "capacity" ? get(rule) : undefined);
};
const conditional = <Value>(get: (rule: Conditional) => Value) => {
  return (rule: Rule): Value | undefined => (rule.kind === "capacity" ? undefined : get(rule));
};

export const ruleTable: PartTable<"rule"> = {
  part: "rule",
  columns: [
    column("kind", "kind", oneOf(["needs", "excludes", "capacity"]), ({ kind }: Rule) => kind),
    column(
      "when",
      "when",
      condition,
      conditional(({ when }) => when ?? undefined),
    ),
    column(
      "then",
      "then",
      condition,
      conditional(({ then }) => then),
    ),
    column(
      "quantity",
      "quantity",
      perhaps(text),
      capacity(({ quantity }) => quantity),
    ),
    column(
      "unit",
      "unit",
      perhaps(text),
      capacity(({ unit }) => unit || undefined),
    ),
    column(
      "link",
      "link",
      perhaps(text),
      capacity(({ link }) => link || undefined),
    ),
    column(
      "base_fact",
      "baseFact",
      perhaps(text),
      capacity(({ baseFact }) => baseFact || undefined),
    ),
    column(
      "supply",
      "supply",
      amounts,
      capacity(({ supply }) => supply),
    ),
    column(
      "demand",
      "demand",
      amounts,
      capacity(({ demand }) => demand),
    ),
    column(
      "reserve_pct",
      "reservePct",
      perhaps(number),
      capacity(({ reservePct }) => reservePct),
    ),
    column("because", "because", text, ({ because }: Rule) => because),
    column("source", "source", text, ({ source }: Rule) => source),
    column("safety", "safety", yesNo, ({ safety }: Rule) => safety, false),
    column("models", "models", codes, ({ models }: Rule) => models, []),
    column("position", "position", wholeNumber, ({ position }: Rule) => position, 0),
  ],
  notes: [{ title: "sentence", write: (rule, names) => ruleSentence(rule, names) }],
  content(flat) {
    const { kind, because, source, safety, models, position } = flat;
    const head = { kind, because, source, safety, models, position };
    if (kind !== "capacity") {
      // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
      return { ...head, when: flat.when ?? null, then: flat.then, ...said(flat, ofCapacity) };
    }
    return {
      ...head,
      quantity: flat.quantity ?? "",
      unit: flat.unit ?? "",
      link: flat.link ?? "",
      baseFact: flat.baseFact ?? "",
      supply: flat.supply ?? {},
      demand: flat.demand ?? {},
      reservePct: flat.reservePct ?? 0,
      ...said(flat, ofCondition),
    };
  },
};

/** What a rule of this kind has no place for, kept so that its schema refuses it rather than that it is lost. */
function said(flat: Flat, fields: readonly string[]): Flat {
  return Object.fromEntries(
    fields.flatMap((field) => (flat[field] === undefined ? [] : [[field, flat[field]]])),
  );
}
