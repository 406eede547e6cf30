import { expect, test } from "vitest";
import { type CountLimits, countSelections } from "./count-selections";
import { openConstraints } from "./open-constraints";

const every = (): boolean => true;

function counted(
  variables: number,
  clauses: readonly (readonly number[])[],
  sums: readonly { weights: readonly number[]; most: number }[] = [],
  limits: CountLimits = { steps: 2_000_000 },
) {
  const open = openConstraints({
    variables: Array.from({ length: variables }, (_, at) => at + 1),
    clauses,
    // At most so much in is at least the rest out.
    sums: sums.map(({ weights, most }) => ({
      terms: weights.map((weight, at) => ({ literal: -(at + 1), weight: BigInt(weight) })),
      least: BigInt(weights.reduce((sum, weight) => sum + weight, 0) - most),
    })),
  });
  if (!open) throw new Error("The sums are too wide.");
  return countSelections(open, every, limits);
}

/** No two neighbours of a square board. */
function apart(side: number): readonly (readonly number[])[] {
  const at = (row: number, column: number): number => row * side + column + 1;
  return Array.from({ length: side }, (_, row) =>
    Array.from({ length: side }, (_, column) => [
      ...(column + 1 < side ? [[-at(row, column), -at(row, column + 1)]] : []),
      ...(row + 1 < side ? [[-at(row, column), -at(row + 1, column)]] : []),
    ]).flat(),
  ).flat();
}

/**
 * Source: The On-Line Encyclopedia of Integer Sequences, A006506 (0-1 matrices of n × n in which no two 1's
 * are adjacent). Values from memory.
 */
test.each([
  [1, 2n],
  [2, 7n],
  [3, 63n],
  [4, 1_234n],
  [5, 55_447n],
  [6, 5_598_861n],
  [7, 1_280_128_950n],
])("boards of side %i with no two neighbours are as many as published", async (side, published) => {
  expect(await counted(side * side, apart(side))).toEqual({ isExact: true, count: published });
});

/**
 * Source: The On-Line Encyclopedia of Integer Sequences, A000170 (n queens that do not attack one another).
 * Values from memory.
 */
test.each([
  [4, 2n],
  [5, 10n],
  [6, 4n],
  [7, 40n],
  [8, 92n],
])("%i queens stand in peace in as many ways as published", async (side, published) => {
  const squares = Array.from({ length: side * side }, (_, at) => [Math.floor(at / side), at % side] as const);
  const clauses: number[][] = Array.from({ length: side }, (_, row) =>
    Array.from({ length: side }, (_, column) => row * side + column + 1),
  );
  squares.forEach(([row, column], a) => {
    squares.forEach(([otherRow, otherColumn], b) => {
      const [down, over] = [Math.abs(row - otherRow), Math.abs(column - otherColumn)];
      if (a < b && (down === 0 || over === 0 || down === over)) clauses.push([-(a + 1), -(b + 1)]);
    });
  });
  expect(await counted(side * side, clauses)).toEqual({ isExact: true, count: published });
});

test("loads within a limit are as many as adding them up one by one says, sums in the millions too", async () => {
  const weights = Array.from({ length: 40 }, (_, at) => 1 + ((at * 7_919) % 97));
  const most = 700;
  const ways = Array.from({ length: most + 1 }, (_, total) => (total === 0 ? 1n : 0n));
  for (const weight of weights) {
    for (let total = most; total >= weight; total -= 1) {
      ways[total] = (ways[total] ?? 0n) + (ways[total - weight] ?? 0n);
    }
  }
  const published = ways.reduce((sum, count) => sum + count, 0n);
  expect(await counted(40, [], [{ weights, most }])).toEqual({ isExact: true, count: published });
});

test("a count that runs out of steps or of time says at least, and never too many", async () => {
  const exact = 1_280_128_950n;
  let asked = 0;
  for (const limits of [{ steps: 400 }, { steps: 1e6, isOver: () => ++asked > 1 }]) {
    const { isExact, count } = await counted(49, apart(7), [], limits);
    expect(isExact).toBe(false);
    expect(count).toBeGreaterThan(0n);
    expect(count).toBeLessThan(exact);
  }
});

test("a count that pauses ends at the same number", async () => {
  let pauses = 0;
  const pause = async (): Promise<void> => {
    pauses += 1;
  };
  const limits = { steps: 2_000_000, pause };
  expect(await counted(49, apart(7), [], limits)).toEqual({ isExact: true, count: 1_280_128_950n });
  expect(pauses).toBeGreaterThan(1);
});

test("a sum too wide for exact numbers is not counted at all rather than wrongly", () => {
  const terms = [1n, 2n ** 60n].map((weight, at) => ({ literal: at + 1, weight }));
  expect(openConstraints({ variables: [1, 2], clauses: [], sums: [{ terms, least: 1n }] })).toBeNull();
});
