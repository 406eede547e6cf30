import fc from "fast-check";
import { expect, test } from "vitest";
import { Profile } from "./profile";

const LATEST = 30;
const taking = fc.record({
  start: fc.integer({ min: 0, max: LATEST }),
  length: fc.integer({ min: 0, max: 8 }),
  units: fc.integer({ min: -2, max: 2 }),
});

test("a list of instants tells the same as a cell for each", () => {
  fc.assert(
    fc.property(fc.array(taking), taking, (takings, asked) => {
      const profile = new Profile(20);
      const cells = Array.from({ length: 2 * LATEST }, () => 20);
      for (const { start, length, units } of takings) {
        profile.take(start, start + length, units);
        for (let at = start; at < start + length; at += 1) cells[at] = (cells[at] ?? 0) - units;
      }
      profile.stretches(0, 2 * LATEST, (from, to, free) => {
        expect(from).toBeLessThan(to);
        for (let at = from; at < to; at += 1) expect(cells[at]).toBe(free);
      });
      const wanted = 18 + asked.units;
      const isFree = (from: number): boolean =>
        cells.slice(from, from + asked.length + 1).every((free) => free >= wanted);
      let first = asked.start;
      while (!isFree(first)) first += 1;
      expect(profile.earliest(asked.start, asked.length + 1, wanted)).toBe(first);
    }),
    { numRuns: 500 },
  );
});
