import { content, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";

export interface TotalRow {
  readonly word: string;
  readonly amount: string;
  /** What it comes to: larger and bold. */
  readonly strong?: boolean;
}

/** Sums under a table, at its right edge; never cut from one another by the end of a page. */
export function writeTotals(sheet: SheetWriter, rows: readonly TotalRow[]): void {
  sheet.keep(rows.length * 15 + 11);
  for (const row of rows) writeTotal(sheet, row);
  sheet.space(6);
}

function writeTotal(sheet: SheetWriter, { word, amount, strong = false }: TotalRow): void {
  const points = strong ? 12 : size.body;
  const style = { align: "right", face: strong ? "bold" : "regular", size: points } as const;
  if (strong) sheet.space(2);
  const wordBox = { x: content.left, y: sheet.y, width: content.width - 110 };
  const amountBox = { x: content.right - 105, y: sheet.y, width: 105 };
  sheet.marked("P", () => {
    sheet.put(word, wordBox, style);
    sheet.put(amount, amountBox, style);
  });
  sheet.space(points + 5);
}
