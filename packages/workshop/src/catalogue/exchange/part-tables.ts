import type { CurrencyCode } from "@buildproof/units";
import type { PartKind } from "../part-content";
import { itemTable } from "./item-table";
import { packageTable } from "./package-table";
import type { PartTable } from "./part-table";
import { ruleTable } from "./rule-table";
import { accessTable, groupTable, operationTable } from "./work-tables";

/** Every part of the catalogue as a table, in the order in which one leans on the other. */
export const partTables: { readonly [Part in PartKind]: PartTable<Part> } = {
  access: accessTable,
  operation: operationTable,
  item: itemTable,
  group: groupTable,
  rule: ruleTable,
  package: packageTable,
};

/** What a part is called in a document of the whole catalogue and in the name of its file. */
export const partFiles = {
  access: "accessWork",
  operation: "operations",
  item: "items",
  group: "groups",
  rule: "rules",
  package: "packages",
} as const satisfies Record<PartKind, string>;

/** Where a figure of the content stands as a column; the field's own name where it has none. */
export function columnTitle<Part extends PartKind>(
  part: Part,
  field: string,
  currency: CurrencyCode,
): string {
  const table: PartTable<Part> = partTables[part];
  const found = table.columns.find(
    (column) => field === column.field || field.startsWith(`${column.field}.`),
  );
  return found ? found.title(currency) : field;
}
