import type { Transaction } from "@buildproof/database";
import { readSelection } from "../quotes/stored-selection";

export type ChosenItem = { readonly code: string; readonly quantity: number };

/** The items of a quote version, as they were chosen when it was made: never those of the build as it is now. */
export function selectionOf(selection: unknown): readonly ChosenItem[] {
  return readSelection(selection).items;
}

export type KitLine = {
  readonly code: string;
  readonly name: string;
  readonly maker: string;
  readonly quantity: number;
  readonly oneUse: boolean;
  readonly returnable: boolean;
  readonly serialised: boolean;
  readonly leadDays: number;
  readonly massKg: number;
};

const partKinds = ["part", "kit", "consumable", "calibration"];

/** What goods-in is counted against: the parts, kits, consumables and licences of the accepted version. */
export async function kitListOf(tx: Transaction, chosen: readonly ChosenItem[]): Promise<readonly KitLine[]> {
  const quantities = new Map(chosen.map(({ code, quantity }) => [code, quantity]));
  const items = await tx.item.findMany({
    where: { code: { in: [...quantities.keys()] }, kind: { in: partKinds } },
    orderBy: [{ position: "asc" }, { code: "asc" }],
  });
  return items.map(({ code, name, maker, oneUse, returnable, serialised, leadDays, massKg }) => ({
    code,
    name,
    maker,
    quantity: quantities.get(code) ?? 1,
    oneUse,
    returnable,
    serialised,
    leadDays,
    massKg,
  }));
}
