import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ImpossibleInputError } from "./impossible-input-error";
import { unitConvert } from "./unit-convert";
import { unitNames, units } from "./unit-table";

const pairs = unitNames.flatMap((from) =>
  unitNames.filter((to) => units[from].dimension === units[to].dimension).map((to) => [from, to] as const),
);

describe("unit conversion", () => {
  test.each(pairs)("%s to %s and back is where it began", (from, to) => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 1e9, noNaN: true }), (value) => {
        const back = unitConvert(unitConvert(value, from, to), to, from);
        // A temperature passes through a large offset, which costs a small value some digits.
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-13 * Math.max(Math.abs(value), 500));
      }),
      { numRuns: 20 },
    );
  });

  test("a unit to itself changes nothing", () => {
    for (const name of unitNames) expect(unitConvert(12.3, name, name)).toBe(12.3);
  });

  test("power does not become torque", () => {
    expect(() => unitConvert(1, "kW", "Nm")).toThrow(ImpossibleInputError);
  });

  test("nothing is colder than absolute zero", () => {
    expect(unitConvert(-273.15, "degC", "degF")).toBe(-459.67);
    expect(() => unitConvert(-273.16, "degC", "degF")).toThrow(/absolute zero/);
  });

  test("a value that leaves the range of numbers is refused", () => {
    expect(() => unitConvert(1e308, "lb", "kg")).not.toThrow();
    expect(() => unitConvert(1.7e308, "kW", "hp")).toThrow(/too large/);
  });
});
