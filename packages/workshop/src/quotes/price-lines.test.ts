import { describe, expect, test } from "vitest";
import type { DraftLine } from "./draft-line";
import { costOfLine, priceLines } from "./price-lines";

const site = { currency: "AUD", jurisdiction: "AU", depositSharePct: 30 } as const;
const line = (unitPriceMinor: bigint, more: Partial<DraftLine> = {}): DraftLine => ({
  kind: "item",
  code: String(unitPriceMinor),
  description: "a part",
  quantity: "1",
  unit: "each",
  unitPriceMinor,
  unitCostMinor: 0n,
  discountPct: "0",
  taxCategory: "S",
  ...more,
});
const plain = { discountMinor: 0n, nonReturnableMinor: 0n };

describe("the amounts of a quote", () => {
  test("tax is a tenth of the whole, rounded once (GST Act 1999 (Cth) ss 9-70, 9-90), and the lines add up to it", () => {
    const { lines, totals } = priceLines(site, [line(333n), line(333n), line(338n)], plain);
    expect(totals).toMatchObject({ netMinor: 1_004n, taxMinor: 100n, grossMinor: 1_104n });
    expect(lines.reduce((sum, each) => sum + each.grossMinor, 0n)).toBe(1_104n);
  });

  test("hours are charged exactly: 11.5 h at 165.00 are 1,897.50", () => {
    const { totals } = priceLines(site, [line(16_500n, { quantity: "11.5", unit: "h" })], plain);
    expect(totals.netMinor).toBe(189_750n);
  });

  test("the deposit is the share of the total, or the landed cost of what cannot go back where that is more", () => {
    expect(priceLines(site, [line(100_000n)], plain).totals.depositMinor).toBe(33_000n);
    const kit = { ...plain, nonReturnableMinor: 75_000n };
    expect(priceLines(site, [line(100_000n)], kit).totals.depositMinor).toBe(75_000n);
  });

  test("a discount off the whole never exceeds what there is to pay", () => {
    const { totals } = priceLines(site, [line(5_000n)], { ...plain, discountMinor: 9_000n });
    expect(totals).toMatchObject({ discountMinor: 5_000n, grossMinor: 0n });
  });

  test("cost is rounded once", () => {
    expect(costOfLine({ quantity: "0.333", unitCostMinor: 100n })).toBe(33n);
    expect(costOfLine({ quantity: "0.5", unitCostMinor: 1n })).toBe(1n);
  });
});
