import fc from "fast-check";
import { expect, test } from "vitest";
import { propagate } from "../complete/propagate";
import { narrowSums } from "./narrow-sums";

const wide = fc.array(fc.bigInt({ min: 1n, max: 2n ** 70n }), { minLength: 1, maxLength: 4 });

/** What follows once the inputs are set as the bits of `row` say. */
function follow(narrow: ReturnType<typeof narrowSums>, inputs: number, row: number) {
  const { variables, clauses } = narrow;
  const encoding = {
    items: inputs,
    variables,
    clauses: clauses.map((literals) => ({ origin: 0, literals })),
    sums: [],
  };
  return propagate(
    encoding,
    Array.from({ length: inputs }, (_, at) => ((row >> at) & 1 ? at + 1 : -at - 1)),
  );
}

function sumOf(weights: readonly bigint[], row: number): bigint {
  return weights.reduce((sum, weight, at) => sum + ((row >> at) & 1 ? weight : 0n), 0n);
}

test("a sum too wide for the solver is refused exactly where it falls short", () => {
  fc.assert(
    fc.property(wide, fc.nat({ max: 63 }), fc.constantFrom(-1n, 0n, 1n), (weights, near, off) => {
      // A digit that nothing shares keeps the sum from being divided until it fits.
      const all = [...weights, 2n ** 71n + 1n, 1n];
      const least = sumOf(all, near % 2 ** all.length) + off;
      const terms = all.map((weight, at) => ({ literal: at + 1, weight }));
      const narrow = narrowSums({
        variables: all.length,
        clauses: [],
        sums: [{ terms, least }],
        objectives: [],
        shown: 0,
      });
      expect(narrow.sums).toEqual([]);
      for (let row = 0; row < 2 ** all.length; row += 1) {
        const { conflict } = follow(narrow, all.length, row);
        expect(conflict !== null).toBe(sumOf(all, row) < least);
      }
    }),
    { numRuns: 60 },
  );
});

test("the levels of an objective too wide for the solver spell its sum", () => {
  fc.assert(
    fc.property(wide, (weights) => {
      const all = [...weights, 2n ** 71n + 1n, 1n];
      const terms = all.map((weight, at) => ({ literal: at + 1, weight }));
      const narrow = narrowSums({
        variables: all.length,
        clauses: [],
        sums: [],
        objectives: [terms],
        shown: 0,
      });
      for (let row = 0; row < 2 ** all.length; row += 1) {
        const { values } = follow(narrow, all.length, row);
        const spelt = narrow.objectives.reduce((high, level) => {
          const value = level.reduce(
            (sum, { literal, weight }) => sum + (values[literal] === 1 ? weight : 0n),
            0n,
          );
          return high * 2n ** 30n + value;
        }, 0n);
        expect(spelt).toBe(sumOf(all, row));
      }
    }),
    { numRuns: 60 },
  );
});

test("what all weights share is divided out, and the least is rounded up", () => {
  const terms = [3n, 6n, 9n].map((weight, at) => ({ literal: at + 1, weight: weight * 10n ** 20n }));
  const narrow = narrowSums({
    variables: 3,
    clauses: [],
    sums: [{ terms, least: 10n ** 20n }],
    objectives: [terms],
    shown: 0,
  });
  expect(narrow.sums).toEqual([
    { least: 1n, terms: [1n, 2n, 3n].map((weight, at) => ({ literal: at + 1, weight })) },
  ]);
  expect(narrow.firstDivisor).toBe(3n * 10n ** 20n);
});
