import { margin } from "@buildproof/pricing";
import { minorUnits } from "@buildproof/units";
import type { Ledger } from "../../builds/ledger";
import { costOfLine } from "../../quotes/price-lines";

/** What a package would earn if everything went as worked out: net less cost. */
export function packageMargin({ lines, total }: Ledger) {
  const costMinor = lines.reduce(
    (sum, { quantity, unitCostMinor }) =>
      sum + Number(costOfLine({ quantity, unitCostMinor: BigInt(unitCostMinor) })),
    0,
  );
  return { costMinor, marginBasisPoints: margin(total.netMinor, minorUnits(costMinor)) };
}
