import type { Transaction } from "@buildproof/database";
import { type DraftLine, lineKinds } from "./draft-line";

export type LineRow = Awaited<ReturnType<Transaction["quoteLine"]["findFirstOrThrow"]>>;

/** A stored line without its amounts; decimals as text, so that nothing is rounded on the way. */
export function asDraftLine(row: LineRow): DraftLine {
  const kind = lineKinds.find((known) => known === row.kind) ?? "extra";
  return {
    kind,
    code: row.code,
    description: row.description,
    quantity: row.quantity.toString(),
    unit: row.unit,
    unitPriceMinor: row.unitPriceMinor,
    unitCostMinor: row.unitCostMinor,
    discountPct: row.discountPct.toString(),
    taxCategory: row.taxCategory,
  };
}
