import type { CurrencyCode } from "@buildproof/units";
import { systems } from "../../builds/systems";
import { type ContentOf, itemKinds } from "../part-content";
import { amount, json, number, oneOf, text, wholeNumber, yesNo } from "./cell";
import { codes } from "./list-cell";
import { column, columnTitled, type PartTable } from "./part-table";

type Item = ContentOf<"item">;

const inCurrency = (title: string) => (currency: CurrencyCode) => `${title}_${currency.toLowerCase()}`;

export const itemTable: PartTable<"item"> = {
  part: "item",
  columns: [
    column("name", "name", text, ({ name }: Item) => name),
    column("system", "system", oneOf<string>(systems.map(({ code }) => code)), ({ system }: Item) => system),
    column("kind", "kind", oneOf(itemKinds), ({ kind }: Item) => kind),
    column("component", "component", text, ({ component }: Item) => component, ""),
    column("maker", "maker", text, ({ maker }: Item) => maker, ""),
    column("supplier", "supplier", text, ({ supplier }: Item) => supplier, ""),
    column("note", "note", text, ({ note }: Item) => note, ""),
    columnTitled(inCurrency("price"), "priceMinor", amount, ({ priceMinor }: Item) => priceMinor),
    columnTitled(inCurrency("cost"), "costMinor", amount, ({ costMinor }: Item) => costMinor),
    column("lead_days", "leadDays", wholeNumber, ({ leadDays }: Item) => leadDays, 0),
    column("mass_kg", "massKg", number, ({ massKg }: Item) => massKg, 0),
    column("returnable", "returnable", yesNo, ({ returnable }: Item) => returnable, true),
    column("one_use", "oneUse", yesNo, ({ oneUse }: Item) => oneUse, false),
    column(
      "warranty_months",
      "warrantyMonths",
      wholeNumber,
      ({ warrantyMonths }: Item) => warrantyMonths,
      12,
    ),
    column("serial_number", "serialised", yesNo, ({ serialised }: Item) => serialised, false),
    column("fits", "fits", codes, ({ fits }: Item) => fits, []),
    column("operations", "operations", codes, ({ operations }: Item) => operations, []),
    column(
      "figures",
      "figures",
      json<Item["figures"]>('{"widthMm":285}'),
      ({ figures }: Item) => figures,
      {},
    ),
    column("position", "position", wholeNumber, ({ position }: Item) => position, 0),
  ],
  content: ({ figures, ...rest }) => ({ ...rest, figures: figures ?? {} }),
};
