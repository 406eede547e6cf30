import fc from "fast-check";
import { expect, test } from "vitest";
import { dotStack } from "./dot-stack";

test("jobs apart lie on the line; jobs alike stand on one another", () => {
  const { dots, rows } = dotStack(
    [
      { id: "a", value: 10 },
      { id: "b", value: 20 },
      { id: "c", value: 20 },
    ],
    0.02,
  );
  expect(dots.map((dot) => dot.row)).toEqual([0, 0, 1]);
  expect(rows).toBe(2);
});

test("no two dots of a row touch, and none is lost", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -40, max: 60, noNaN: true }), { maxLength: 60 }), (values) => {
      const { dots } = dotStack(
        values.map((value, index) => ({ id: `${index}`, value })),
        0.03,
      );
      expect(new Set(dots.map((dot) => dot.id)).size).toBe(values.length);
      for (const dot of dots) {
        expect(dot.across).toBeGreaterThanOrEqual(-1e-9);
        expect(dot.across).toBeLessThanOrEqual(1 + 1e-9);
        const beside = dots.filter((other) => other !== dot && other.row === dot.row);
        for (const other of beside)
          expect(Math.abs(other.across - dot.across)).toBeGreaterThanOrEqual(0.03 - 1e-6);
      }
    }),
  );
});
