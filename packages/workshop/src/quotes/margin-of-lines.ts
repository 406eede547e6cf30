import { margin } from "@buildproof/pricing";
import { minorUnits } from "@buildproof/units";
import { asDraftLine, type LineRow } from "./line-row";
import { costOfLine } from "./price-lines";

/** What a version would earn if everything went as quoted: net less cost, in all and line by line. */
export function marginOfLines(rows: readonly LineRow[]) {
  const lines = rows.map((row) => ({ row, costMinor: costOfLine(asDraftLine(row)) }));
  const netMinor = rows.reduce((sum, row) => sum + row.netMinor, 0n);
  const costMinor = lines.reduce((sum, line) => sum + line.costMinor, 0n);
  return {
    netMinor: Number(netMinor),
    costMinor: Number(costMinor),
    marginBasisPoints: margin(minorUnits(netMinor), minorUnits(costMinor)),
    costOf: Object.fromEntries(lines.map((line) => [line.row.id, Number(line.costMinor)])),
  };
}
