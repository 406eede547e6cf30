import { minorUnits } from "@buildproof/units";
import fc from "fast-check";
import { expect, test } from "vitest";
import { margin } from "./margin";
import { priceForMargin } from "./price-for-margin";

// By hand: 25 % of 100.00 was to be earned at a cost of 75.00; at 90.00 the same share needs 120.00.
test("a dearer job needs the price that keeps its share", () => {
  const quoted = { sellMinor: minorUnits(100_00), costMinor: minorUnits(75_00) };
  expect(priceForMargin(minorUnits(90_00), quoted)).toBe(120_00);
});

test("the price found earns the quoted share, to a basis point", () => {
  const amount = fc.integer({ min: 100_00, max: 50_000_00 });
  fc.assert(
    fc.property(amount, amount, amount, (sell, cost, actual) => {
      const quoted = { sellMinor: minorUnits(sell), costMinor: minorUnits(cost) };
      const price = priceForMargin(minorUnits(actual), quoted);
      const wanted = Number(margin(quoted.sellMinor, quoted.costMinor));
      const earned = Number(margin(minorUnits(Number(price)), minorUnits(actual)));
      // A cent on a small price is more than a basis point.
      const oneCent = (10_000 * actual) / Number(price) ** 2;
      expect(Math.abs(earned - wanted)).toBeLessThanOrEqual(1 + oneCent);
    }),
  );
});

test("what was to cost nothing keeps its share at no price", () => {
  expect(priceForMargin(minorUnits(1), { sellMinor: minorUnits(100), costMinor: minorUnits(0) })).toBeNull();
});

test("a share of nothing is refused", () => {
  const quoted = { sellMinor: minorUnits(0), costMinor: minorUnits(1) };
  expect(() => priceForMargin(minorUnits(1), quoted)).toThrow(RangeError);
});
