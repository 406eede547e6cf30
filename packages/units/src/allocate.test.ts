import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allocateByLargestRemainder } from "./allocate";
import { minorUnits } from "./minor-units";

const share = (amount: number, weights: readonly number[]) =>
  allocateByLargestRemainder(minorUnits(amount), weights.map(minorUnits));

describe("sharing an amount by largest remainder", () => {
  test("a hundred over three equal weights gives the odd unit to the first", () => {
    expect(share(100, [1, 1, 1])).toEqual([34, 33, 33]);
  });

  test("the larger remainder is served before the earlier line", () => {
    expect(share(10, [1, 5])).toEqual([2, 8]);
    expect(share(3, [2, 3])).toEqual([1, 2]);
  });

  test("nothing over nothing is nothing; something over nothing is refused", () => {
    expect(share(0, [0, 0])).toEqual([0, 0]);
    expect(() => share(1, [0, 0])).toThrow(RangeError);
  });

  test("the parts always add up, and each is within one unit of its exact share", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.array(fc.integer({ min: -5_000, max: 1_000_000 }), { minLength: 1, maxLength: 12 }),
        (amount, weights) => {
          const total = weights.reduce((sum, weight) => sum + weight, 0);
          fc.pre(total !== 0);
          const parts = share(amount, weights);
          expect(parts.reduce((sum, part) => sum + part, 0)).toBe(amount);
          parts.forEach((part, index) => {
            const exact = (amount * (weights[index] ?? 0)) / total;
            expect(Math.abs(part - exact)).toBeLessThan(1 + Math.abs(exact) * 1e-12);
          });
        },
      ),
    );
  });
});
