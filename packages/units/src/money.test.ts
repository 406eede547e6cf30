import { describe, expect, test } from "vitest";
import { decimalAmount, formatMoney } from "./format-money";
import { floorQuotient, quotientToNumber, roundedQuotient } from "./integer-quotient";
import { minorUnits, sumMinorUnits } from "./minor-units";

describe("minor units", () => {
  test("fractions, NaN and amounts that a number cannot hold are refused", () => {
    for (const value of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53]) {
      expect(() => minorUnits(value)).toThrow(RangeError);
    }
    expect(() => minorUnits(2n ** 60n)).toThrow(RangeError);
    expect(() => sumMinorUnits([minorUnits(2 ** 53 - 1), minorUnits(1)])).toThrow(RangeError);
  });

  test("minus zero is zero", () => {
    expect(Object.is(minorUnits(-0), 0)).toBe(true);
  });
});

describe("rounding", () => {
  test("halves go towards plus infinity, and floors towards minus infinity", () => {
    expect([5n, -5n, 15n, -15n, 14n, -14n].map((n) => roundedQuotient(n, 10n))).toEqual([
      1n,
      0n,
      2n,
      -1n,
      1n,
      -1n,
    ]);
    expect([-1n, 1n, -10n].map((n) => floorQuotient(n, 10n))).toEqual([-1n, 0n, -1n]);
    expect(floorQuotient(1n, -10n)).toBe(-1n);
  });

  test("a quotient becomes the nearest number", () => {
    expect(quotientToNumber(1n, 3n)).toBe(1 / 3);
    expect(quotientToNumber(10n ** 40n, 10n ** 40n + 1n)).toBe(1);
    expect(quotientToNumber(-7n, 2n)).toBe(-3.5);
  });
});

describe("money in words", () => {
  test("cents, fils and yen have two, three and no decimals", () => {
    expect(formatMoney(minorUnits(194_000), "AUD")).toBe("$1,940.00");
    expect(formatMoney(minorUnits(-5), "AUD")).toBe("-$0.05");
    expect(decimalAmount(minorUnits(-5), "KWD")).toBe("-0.005");
    expect(decimalAmount(minorUnits(1_940), "JPY")).toBe("1940");
  });

  test("a sixteen-digit amount keeps its last cent", () => {
    expect(formatMoney(minorUnits(9_007_199_254_740_991), "AUD")).toBe("$90,071,992,547,409.91");
  });
});
