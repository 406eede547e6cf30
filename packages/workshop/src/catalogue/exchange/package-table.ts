import type { ContentOf } from "../part-content";
import { json, number, perhaps, text, wholeNumber } from "./cell";
import { codes, sentences } from "./list-cell";
import { type Column, column, type PartTable } from "./part-table";

type Package = ContentOf<"package">;
type Power = Extract<NonNullable<Package["promise"]>, { lowKw: number }>;

const power = <Value>(get: (promise: Power) => Value) => {
  return ({ promise }: Package): Value | undefined =>
    promise && "lowKw" in promise ? get(promise) : undefined;
};

const promised: readonly Column<Package>[] = [
  column(
    "promise_low_kw",
    "promise.lowKw",
    perhaps(number),
    power(({ lowKw }) => lowKw),
  ),
  column(
    "promise_high_kw",
    "promise.highKw",
    perhaps(number),
    power(({ highKw }) => highKw),
  ),
  column(
    "promise_condition",
    "promise.referenceCondition",
    perhaps(text),
    power(({ referenceCondition }) => referenceCondition),
  ),
  column(
    "promise_remedy",
    "promise.remedy",
    perhaps(text),
    power(({ remedy }) => remedy),
  ),
  column(
    "promise_boost_kpa",
    "promise.boostKPa",
    perhaps(number),
    power(({ boostKPa }) => boostKPa),
  ),
  column("promise_tow_kg", "promise.towKg", perhaps(number), ({ promise }: Package) => promise?.towKg),
];

export const packageTable: PartTable<"package"> = {
  part: "package",
  columns: [
    column("name", "name", text, ({ name }: Package) => name),
    column("outcome", "outcome", text, ({ outcome }: Package) => outcome),
    column("models", "models", codes, ({ models }: Package) => models),
    column("items", "items", codes, ({ items }: Package) => items),
    column(
      "choices",
      "choices",
      json<Package["choices"]>('[{"name":"Plugs","pick":"exactly-one","items":["plugs-one-step"]}]'),
      ({ choices }: Package) => choices,
      [],
    ),
    column("options", "options", codes, ({ options }: Package) => options, []),
    ...promised,
    column("assumptions", "assumptions", sentences, ({ assumptions }: Package) => assumptions, []),
    column("exclusions", "exclusions", sentences, ({ exclusions }: Package) => exclusions, []),
    column("cautions", "cautions", sentences, ({ cautions }: Package) => cautions, []),
    column("position", "position", wholeNumber, ({ position }: Package) => position, 0),
  ],
  content(flat) {
    const told = promised.flatMap(({ field }) =>
      flat[field] === undefined ? [] : [[field, flat[field]] as const],
    );
    const rest = Object.entries(flat).filter(([field]) => !field.startsWith("promise."));
    const promise = Object.fromEntries(told.map(([field, value]) => [field.slice("promise.".length), value]));
    const isTowOnly = told.every(([field]) => field === "promise.towKg");
    return {
      ...Object.fromEntries(rest),
      choices: flat.choices ?? [],
      promise: told.length === 0 ? null : isTowOnly ? promise : { at: "hubs", ...promise },
    };
  },
};
