import { basisPoints, minorUnits } from "@buildproof/units";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { margin } from "../margin/margin";
import { depositFor } from "./deposit-for";
import { jurisdictions, type QuoteLine, type QuoteLines, taxCategories, taxRoundings } from "./quote-lines";
import { quoteTotals } from "./quote-totals";

const line = (unitPriceMinor: number, more: Partial<QuoteLine> = {}): QuoteLine => ({
  quantity: 1,
  unitPriceMinor: minorUnits(unitPriceMinor),
  taxCategory: "S",
  ...more,
});
const quote = (lines: readonly QuoteLine[], more: Partial<QuoteLines> = {}): QuoteLines => ({
  currency: "AUD",
  jurisdiction: "AU",
  pricesIncludeTax: false,
  lines,
  ...more,
});

describe("line amounts", () => {
  test("are worked out as decimals and rounded once: 1.15 × 100 with 10 % off is 103.5, rounded up", () => {
    expect(quoteTotals(quote([line(100, { quantity: 1.15, discountPct: 10 })])).netMinor).toBe(104);
    expect(quoteTotals(quote([line(-100, { quantity: "1.15", discountPct: 10 })])).netMinor).toBe(-103);
  });

  test("2.675 hours at 100.00 are 267.50 and not one cent less", () => {
    expect(quoteTotals(quote([line(10_000, { quantity: 2.675 })])).netMinor).toBe(26_750);
  });

  test.each([
    [line(1, { quantity: "0.0000001" }), "too-many-decimals"],
    [line(1, { discountPct: 100.1 }), "discount-out-of-range"],
    [line(1, { discountPct: -1 }), "discount-out-of-range"],
    [line(9_007_199_254_740_991, { quantity: 2 }), "amount-too-large"],
  ])("case %# is refused", (bad, code) => {
    expect(() => quoteTotals(quote([bad]))).toThrow(expect.objectContaining({ code }));
  });

  test("six decimals and trailing zeros are allowed", () => {
    expect(quoteTotals(quote([line(1_000_000, { quantity: "0.00000100" })])).netMinor).toBe(1);
  });
});

describe("a discount on the whole", () => {
  test("is spread over the lines by largest remainder, ties to the earlier", () => {
    const { lines } = quoteTotals(
      quote([line(100), line(100), line(100)], { discountMinor: minorUnits(100) }),
    );
    expect(lines.map(({ netMinor }) => netMinor)).toEqual([66, 67, 67]);
  });

  test.each([-1, 301])("of %d on 300 is refused", (discount) => {
    const given = quote([line(100), line(200)], { discountMinor: minorUnits(discount) });
    expect(() => quoteTotals(given)).toThrow(expect.objectContaining({ code: "discount-out-of-range" }));
  });

  test("comes off the gross where prices include the tax", () => {
    const given = quote([line(11_000)], { pricesIncludeTax: true, discountMinor: minorUnits(1_100) });
    expect(quoteTotals(given)).toMatchObject({ netMinor: 9_000, taxMinor: 900, grossMinor: 9_900 });
  });
});

describe("tax", () => {
  test("once per category is spread back over its lines", () => {
    const { lines, taxMinor } = quoteTotals(quote([line(1005), line(1005), line(1005)]));
    expect(taxMinor).toBe(302);
    expect(lines.map((each) => each.taxMinor)).toEqual([101, 101, 100]);
  });

  test("is nothing on zero-rated, exempt and out-of-scope lines, and each category is summed", () => {
    const { taxes, taxMinor } = quoteTotals(
      quote([line(1000, { taxCategory: "Z" }), line(1000), line(500, { taxCategory: "E" })]),
    );
    expect(taxMinor).toBe(100);
    expect(taxes).toEqual([
      { taxCategory: "S", ratePct: 10, netMinor: 1000, taxMinor: 100, grossMinor: 1100 },
      { taxCategory: "Z", ratePct: 0, netMinor: 1000, taxMinor: 0, grossMinor: 1000 },
      { taxCategory: "E", ratePct: 0, netMinor: 500, taxMinor: 0, grossMinor: 500 },
    ]);
  });

  test("lines that cancel out carry no tax in all", () => {
    expect(quoteTotals(quote([line(55), line(-55)]))).toMatchObject({
      netMinor: 0,
      taxMinor: 0,
      grossMinor: 0,
    });
  });

  test("is rounded in the usual way of the place unless asked otherwise", () => {
    expect(quoteTotals(quote([line(1)])).rounding).toBe("total");
    expect(quoteTotals(quote([line(1)], { jurisdiction: "AE" })).rounding).toBe("line");
    expect(quoteTotals(quote([line(1)], { jurisdiction: "SA" })).rounding).toBe("total");
  });
});

const anyLine: fc.Arbitrary<QuoteLine> = fc.record({
  quantity: fc.integer({ min: -5_000, max: 50_000 }).map((n) => n / 1000),
  unitPriceMinor: fc.integer({ min: -100_000, max: 5_000_000 }).map(minorUnits),
  discountPct: fc.integer({ min: 0, max: 1000 }).map((n) => n / 10),
  taxCategory: fc.constantFrom(...taxCategories),
});
const anyQuote: fc.Arbitrary<QuoteLines> = fc.record({
  currency: fc.constant("AUD" as const),
  jurisdiction: fc.constantFrom(...jurisdictions),
  pricesIncludeTax: fc.boolean(),
  lines: fc.array(anyLine, { maxLength: 12 }),
  rounding: fc.constantFrom(...taxRoundings),
});

test("gross is net plus tax everywhere, and the lines add up to the totals", () => {
  fc.assert(
    fc.property(anyQuote, fc.double({ min: 0, max: 1, noNaN: true }), (given, part) => {
      const basis = given.pricesIncludeTax ? "grossMinor" : "netMinor";
      const undiscounted = quoteTotals(given)[basis];
      const discountMinor = minorUnits(Math.trunc(undiscounted * part));
      const totals = quoteTotals({ ...given, discountMinor });
      for (const each of [totals, ...totals.lines])
        expect(each.grossMinor).toBe(each.netMinor + each.taxMinor);
      for (const measure of ["netMinor", "taxMinor", "grossMinor"] as const) {
        expect(totals.lines.reduce((sum, each) => sum + each[measure], 0)).toBe(totals[measure]);
        expect(totals.taxes.reduce((sum, each) => sum + each[measure], 0)).toBe(totals[measure]);
      }
      expect(totals[basis]).toBe(undiscounted - discountMinor);
    }),
    { numRuns: 500 },
  );
});

describe("deposits", () => {
  const terms = {
    totalMinor: minorUnits(3_616_965),
    share: basisPoints(3_000),
    nonReturnableCostMinor: minorUnits(1_320_000),
  };

  test("cover what cannot be returned when that is more than the usual share", () => {
    expect(depositFor(terms)).toEqual({
      depositMinor: 1_320_000,
      balanceMinor: 2_296_965,
      because: "non-returnable-parts",
    });
    expect(depositFor({ ...terms, nonReturnableCostMinor: minorUnits(0) })).toMatchObject({
      depositMinor: 1_085_090,
      because: "share-of-total",
    });
  });

  test("never exceed the total", () => {
    expect(depositFor({ ...terms, totalMinor: minorUnits(500) })).toMatchObject({
      depositMinor: 500,
      balanceMinor: 0,
    });
  });

  test("are refused for shares and amounts that make no sense", () => {
    expect(() => depositFor({ ...terms, share: basisPoints(10_001) })).toThrow(RangeError);
    expect(() => depositFor({ ...terms, totalMinor: minorUnits(-1) })).toThrow(RangeError);
  });
});

test("margin is the share of the sell price, and nothing sold has none", () => {
  expect(margin(minorUnits(10_000), minorUnits(6_500))).toBe(3_500);
  expect(margin(minorUnits(10_000), minorUnits(12_000))).toBe(-2_000);
  expect(margin(minorUnits(0), minorUnits(100))).toBeNull();
});
