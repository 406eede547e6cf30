import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadLabels } from "./spread-labels";

const frame = { gap: 14, low: 0, high: 300 };

test("labels that do not meet stay where they are", () => {
  expect(spreadLabels([20, 100, 60], frame)).toEqual([20, 100, 60]);
});

test("labels keep their order, their distance and the frame", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -50, max: 350, noNaN: true }), { maxLength: 12 }), (wanted) => {
      const placed = spreadLabels(wanted, frame);
      const pairs = wanted.map((want, index) => ({ want, at: placed[index] ?? Number.NaN }));
      const sorted = pairs.toSorted((a, b) => a.at - b.at);
      for (const { at } of sorted) {
        expect(at).toBeGreaterThanOrEqual(frame.low - 1e-9);
        expect(at).toBeLessThanOrEqual(frame.high + 1e-9);
      }
      sorted.slice(1).forEach((next, index) => {
        const before = sorted[index];
        expect(next.at - (before?.at ?? 0)).toBeGreaterThanOrEqual(frame.gap - 1e-9);
        expect(next.want).toBeGreaterThanOrEqual(before?.want ?? 0);
      });
    }),
  );
});

test("too many labels share the room there is", () => {
  expect(spreadLabels([5, 5, 5], { gap: 100, low: 0, high: 100 })).toEqual([0, 50, 100]);
});
