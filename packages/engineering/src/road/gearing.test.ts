import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type GearingQuestion, gearingChange } from "./gearing";
import { standardAtmosphere } from "./standard-atmosphere";

const question: GearingQuestion = {
  standardTyre: "265/70R17",
  fittedTyre: "285/70R17",
  finalDrive: 3.9,
  gear: 0.7,
};

test("taller tyres gear it up, and the effective final drive says the same as the engine speed", () => {
  const change = gearingChange(question);
  expect(change.effectiveFinalDrive).toBeCloseTo((3.9 * 804) / 832, 12);
  expect(change.engineRpmAfter / change.engineRpmBefore).toBeCloseTo(804 / 832, 12);
  // 27.778 m/s × 60 ÷ 2.4522 m × 0.7 × 3.9.
  expect(change.engineRpmBefore).toBeCloseTo(1855.5, 0);
  expect(change.rideHeightRiseMm).toBe(14);
});

test("a final drive changed by as much as the tyres brings the engine speed back", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 6, noNaN: true }),
      fc.integer({ min: 10, max: 200 }),
      (finalDrive, atKmh) => {
        const back = gearingChange({
          ...question,
          finalDrive,
          atKmh,
          fittedFinalDrive: (finalDrive * 832) / 804,
        });
        expect(back.changePct).toBeCloseTo(0, 9);
        expect(back.engineRpmAfter).toBeCloseTo(back.engineRpmBefore, 6);
        expect(gearingChange({ ...question, finalDrive, atKmh }).changePct).toBeLessThan(0);
      },
    ),
  );
});

describe("what cannot be", () => {
  test.each([
    [{ finalDrive: 0 }, "finalDrive"],
    [{ fittedFinalDrive: Number.NaN }, "fittedFinalDrive"],
    [{ gear: -1 }, "gear"],
    [{ atKmh: 0 }, "atKmh"],
    [{ atKmh: Number.POSITIVE_INFINITY }, "atKmh"],
    [{ finalDrive: Number.NEGATIVE_INFINITY }, "finalDrive"],
    [{ gear: Number.NaN }, "gear"],
    [{ standardTyre: "old" }, "standardTyre"],
    [{ fittedTyre: "new" }, "fittedTyre"],
  ])("%j is refused at %s", (change, path) => {
    expect(() => gearingChange({ ...question, ...change })).toThrow(expect.objectContaining({ path }));
  });

  test.each([12_000, -6_000, Number.NaN])("an altitude of %d m is refused", (altitude) => {
    expect(() => standardAtmosphere(altitude)).toThrow(expect.objectContaining({ path: "altitudeM" }));
  });
});

test("higher and hotter air is thinner", () => {
  expect(standardAtmosphere(1000).densityKgPerM3).toBeLessThan(standardAtmosphere(0).densityKgPerM3);
  expect(standardAtmosphere(0, 40).densityKgPerM3).toBeLessThan(standardAtmosphere(0, 10).densityKgPerM3);
  expect(standardAtmosphere(0).densityKgPerM3).toBeCloseTo(1.225, 3);
});

test("every valid pair of tyres and drives gives numbers, and a larger tyre always gears taller", () => {
  const size = fc.record({
    width: fc.integer({ min: 21, max: 91 }).map((step) => step * 5),
    aspect: fc.integer({ min: 4, max: 18 }).map((step) => step * 5),
    rim: fc.integer({ min: 12, max: 24 }),
  });
  fc.assert(
    fc.property(size, fc.double({ min: 0.2, max: 30, noNaN: true }), ({ width, aspect, rim }, ratio) => {
      const standardTyre = `${width}/${aspect}R${rim}`;
      const fittedTyre = `${width}/${aspect + 5}R${rim}`;
      const change = gearingChange({ standardTyre, fittedTyre, finalDrive: ratio, gear: ratio });
      expect(Object.values(change).every(Number.isFinite)).toBe(true);
      expect(change.changePct).toBeLessThan(0);
      expect(change.engineRpmAfter).toBeLessThan(change.engineRpmBefore);
      expect(change.rideHeightRiseMm).toBeGreaterThan(0);
    }),
  );
});
