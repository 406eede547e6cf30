import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "./spread";

describe("how the jobs of a package lie", () => {
  test("no jobs have no spread, and one job is all of its own", () => {
    expect(spread([])).toBeNull();
    expect(spread([31])).toEqual({
      count: 1,
      lowest: 31,
      lowerQuartile: 31,
      median: 31,
      upperQuartile: 31,
      highest: 31,
    });
  });

  // By hand: positions 2, 3 and 4 of five; between the middle two of four.
  test("an odd number has its middle one, an even number the mean of the middle two", () => {
    expect(spread([9, 1, 5, 7, 3])).toMatchObject({ lowerQuartile: 3, median: 5, upperQuartile: 7 });
    expect(spread([4, 1, 3, 2])).toMatchObject({ lowerQuartile: 1.75, median: 2.5, upperQuartile: 3.25 });
  });

  test("one job that went wrong moves the ends and not the median", () => {
    const sound = [30, 31, 32, 33, 34];
    expect(spread([...sound.slice(1), -400])?.median).toBe(32);
    expect(spread([...sound.slice(1), -400])?.lowest).toBe(-400);
  });

  test("the five figures stand in order, whatever the values and their order", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -10_000, max: 10_000 }), { minLength: 1 }), (values) => {
        const found = spread(values);
        const five = [
          found?.lowest,
          found?.lowerQuartile,
          found?.median,
          found?.upperQuartile,
          found?.highest,
        ].map(Number);
        expect(five).toEqual(five.toSorted((one, other) => one - other));
        expect(spread(values.toReversed())).toEqual(found);
      }),
    );
  });

  test("what is not a number is refused", () => {
    expect(() => spread([1, Number.NaN])).toThrow(RangeError);
  });
});
