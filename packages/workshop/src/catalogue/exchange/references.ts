import { itemsOf } from "../dangling";
import type { ContentOf, PartKind } from "../part-content";

/** What of the catalogue, or of the vehicles, a part points at. */
export type Reference = {
  readonly field: string;
  readonly kind: "item" | "operation" | "access" | "model";
  readonly code: string;
};

/** Everything that one part of the catalogue points at, with the field that does. */
export function referencesOf<Part extends PartKind>(
  part: Part,
  content: ContentOf<Part>,
): readonly Reference[] {
  return (readers[part] as (content: ContentOf<Part>) => readonly Reference[])(content); // The part chose both.
}

const of = (field: string, kind: Reference["kind"], codes: readonly string[]): readonly Reference[] =>
  codes.map((code) => ({ field, kind, code }));

const readers: { readonly [Part in PartKind]: (content: ContentOf<Part>) => readonly Reference[] } = {
  access: ({ needs }) => of("needs", "access", needs),
  operation: ({ access }) => of("access", "access", access),
  item: ({ fits, operations }) => [
    ...of("fits", "model", fits),
    ...of("operations", "operation", operations),
  ],
  group: ({ items }) => of("items", "item", items),
  rule: (rule) => [
    ...of("models", "model", rule.models),
    ...(rule.kind === "capacity"
      ? [...of("supply", "item", Object.keys(rule.supply)), ...of("demand", "item", Object.keys(rule.demand))]
      : [
          ...of("when", "item", rule.when ? itemsOf(rule.when) : []),
          ...of("then", "item", itemsOf(rule.then)),
        ]),
  ],
  package: ({ models, items, choices, options }) => [
    ...of("models", "model", models),
    ...of("items", "item", items),
    ...of(
      "choices",
      "item",
      choices.flatMap((choice) => choice.items),
    ),
    ...of("options", "item", options),
  ],
};
