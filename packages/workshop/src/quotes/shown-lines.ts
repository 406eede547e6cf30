import { asDraftLine, type LineRow } from "./line-row";

/** The lines of a version as the desk reads and changes them; nothing of what they cost us. */
export function shownLines(rows: readonly LineRow[]) {
  return rows.map((row) => {
    const { unitCostMinor: _, unitPriceMinor, ...line } = asDraftLine(row);
    return {
      ...line,
      id: row.id,
      unitPriceMinor: Number(unitPriceMinor),
      grossMinor: Number(row.grossMinor),
    };
  });
}
