import fc from "fast-check";
import { expect, test } from "vitest";
import { waterfallBars } from "./waterfall-bars";

test("the last bar is what the steps leave of the first", () => {
  const { end, steps } = waterfallBars(1_000_00, [{ minor: -250_00 }, { minor: 50_00 }]);
  expect(end.minor).toBe(800_00);
  expect(steps.map((step) => step.kind)).toEqual(["loss", "gain"]);
});

test("a margin that ends in a loss is drawn to the other side of zero", () => {
  const { end, zero } = waterfallBars(100, [{ minor: -300 }]);
  expect(zero).toBeCloseTo(2 / 3);
  expect(end.left).toBeCloseTo(0);
  expect(end.left + end.width).toBeCloseTo(zero);
});

test("every bar lies within the drawing, and each step begins where the one before ended", () => {
  const amounts = fc.integer({ min: -1_000_000, max: 1_000_000 });
  fc.assert(
    fc.property(amounts, fc.array(amounts, { maxLength: 8 }), (start, steps) => {
      const fall = waterfallBars(
        start,
        steps.map((minor) => ({ minor })),
      );
      for (const bar of [fall.start, ...fall.steps, fall.end]) {
        expect(bar.left).toBeGreaterThanOrEqual(-1e-9);
        expect(bar.left + bar.width).toBeLessThanOrEqual(1 + 1e-9);
      }
      const ends = fall.steps.map((bar) => (bar.kind === "loss" ? bar.left : bar.left + bar.width));
      const begins = fall.steps.map((bar) => (bar.kind === "loss" ? bar.left + bar.width : bar.left));
      begins.slice(1).forEach((begin, index) => {
        expect(begin).toBeCloseTo(ends[index] ?? Number.NaN, 9);
      });
    }),
  );
});
