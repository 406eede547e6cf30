import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tyreFitness } from "../tyres/tyre-fitness";
import { type AxleLoadsQuestion, axleLoads } from "./axle-loads";
import { type MassBudgetQuestion, massBudget, trailerWheelMassKg } from "./mass-budget";

const budget: MassBudgetQuestion = {
  kerbKg: 2246,
  addedKg: [200, 110],
  carriedKg: 0,
  gvmKg: 3280,
  gcmKg: 5850,
  brakedTowKg: 3500,
};
const axles: AxleLoadsQuestion = {
  wheelbaseMm: 3075,
  frontKg: 1400,
  rearKg: 1300,
  added: [],
  tyre: "285/65R18 116T",
  frontRatingKg: 1600,
  rearRatingKg: 1900,
};

describe("what may be carried and towed", () => {
  test("a load that just fits is within: tenths of a kilogram add up exactly", () => {
    const answer = massBudget({ ...budget, addedKg: Array.from({ length: 10 }, () => 0.1), carriedKg: 1033 });
    expect(answer).toMatchObject({ vehicleKg: 3280, gvmLeftKg: 0, payloadKg: 1033 });
  });

  test("every kilogram added is one less to carry, and never one more to tow", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (a, b) => {
          const light = massBudget({ ...budget, addedKg: [a], carriedKg: b });
          const heavy = massBudget({ ...budget, addedKg: [a, 10], carriedKg: b });
          expect(heavy.payloadKg).toBeCloseTo(light.payloadKg - 10, 9);
          expect(heavy.maxTrailerKg).toBeLessThanOrEqual(light.maxTrailerKg);
          expect(heavy.maxTrailerKg).toBeGreaterThanOrEqual(0);
          expect(heavy.vehicleKg + heavy.gvmLeftKg).toBeCloseTo(budget.gvmKg, 9);
        },
      ),
    );
  });

  test.each([
    [{ kerbKg: 0 }, "kerbKg"],
    [{ addedKg: [5, Number.NaN] }, "addedKg[1]"],
    [{ carriedKg: -1 }, "carriedKg"],
    [{ gcmKg: 3000 }, "gcmKg"],
    [{ kerbKg: Number.POSITIVE_INFINITY }, "kerbKg"],
    [{ addedKg: [Number.NEGATIVE_INFINITY] }, "addedKg[0]"],
    [{ carriedKg: Number.NaN }, "carriedKg"],
    [{ gvmKg: -3280 }, "gvmKg"],
    [{ gcmKg: Number.NaN }, "gcmKg"],
    [{ brakedTowKg: -1 }, "brakedTowKg"],
  ])("%j is refused at %s", (change, path) => {
    expect(() => massBudget({ ...budget, ...change })).toThrow(expect.objectContaining({ path }));
  });

  test.each([
    [-1, 0, "trailerKg"],
    [Number.NaN, 0, "trailerKg"],
    [500, -1, "towBallKg"],
    [500, Number.NaN, "towBallKg"],
  ])("a trailer of %d kg with %d on the ball is refused at %s", (trailerKg, towBallKg, path) => {
    expect(() => trailerWheelMassKg(trailerKg, towBallKg)).toThrow(expect.objectContaining({ path }));
  });

  test("a tow ball cannot carry more than the trailer weighs", () => {
    expect(() => trailerWheelMassKg(500, 600)).toThrow(expect.objectContaining({ path: "towBallKg" }));
  });
});

describe("axle loads", () => {
  test("a mass over the front axle loads it alone, one in the middle both alike", () => {
    const { front, rear } = axleLoads({
      ...axles,
      added: [
        { massKg: 60, behindFrontAxleMm: 0 },
        { massKg: 40, behindFrontAxleMm: 1537.5 },
      ],
    });
    expect(front.loadKg).toBeCloseTo(1480, 9);
    expect(rear.loadKg).toBeCloseTo(1320, 9);
    expect(rear).toMatchObject({ tyreCapacityKg: 2500, leftKg: expect.closeTo(580, 6) });
  });

  test("a tow ball behind the rear axle loads it by more than it weighs and lifts the front", () => {
    const { front, rear } = axleLoads({ ...axles, added: [{ massKg: 350, behindFrontAxleMm: 4305 }] });
    expect(rear.loadKg).toBeCloseTo(1300 + (350 * 4305) / 3075, 9);
    expect(front.loadKg).toBeLessThan(1400);
    expect(rear.leftKg).toBeLessThan(1900 - 1300 - 350);
  });

  test("no mass is lost, wherever it is", () => {
    const place = fc.record({
      massKg: fc.double({ min: -100, max: 500, noNaN: true }),
      behindFrontAxleMm: fc.double({ min: -1500, max: 6000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(place, { maxLength: 8 }), (added) => {
        const { front, rear } = axleLoads({ ...axles, added });
        const sum = added.reduce((total, { massKg }) => total + massKg, 2700);
        expect(front.loadKg + rear.loadKg).toBeCloseTo(sum, 6);
      }),
    );
  });

  test("without a load index only the axle's rating limits", () => {
    expect(axleLoads({ ...axles, tyre: "285/65R18" }).rear).toMatchObject({
      tyreCapacityKg: null,
      leftKg: 600,
    });
  });

  test.each([
    [{ wheelbaseMm: 0 }, "wheelbaseMm"],
    [{ rearKg: Number.NaN }, "rearKg"],
    [{ added: [{ massKg: 5, behindFrontAxleMm: 99_000 }] }, "added[0].behindFrontAxleMm"],
    [{ tyre: "round" }, "tyre"],
    [{ wheelbaseMm: Number.POSITIVE_INFINITY }, "wheelbaseMm"],
    [{ frontKg: -1400 }, "frontKg"],
    [{ frontRatingKg: 0 }, "frontRatingKg"],
    [{ rearRatingKg: Number.NaN }, "rearRatingKg"],
    [{ added: [{ massKg: Number.NaN, behindFrontAxleMm: 0 }] }, "added[0].massKg"],
    [{ added: [{ massKg: 5, behindFrontAxleMm: Number.NaN }] }, "added[0].behindFrontAxleMm"],
  ])("%j is refused at %s", (change, path) => {
    expect(() => axleLoads({ ...axles, ...change })).toThrow(expect.objectContaining({ path }));
  });
});

test("a tyre that does not say what it carries cannot be judged", () => {
  expect(tyreFitness("285/65R18 116T", 2500, 190)).toMatchObject({ carries: true, fastEnough: true });
  expect(tyreFitness("285/65R18 116T", 2501, 191)).toMatchObject({ carries: false, fastEnough: false });
  expect(() => tyreFitness("285/65R18", 2000, 180)).toThrow("add load index");
});

test.each([
  [0, 180, "axleRatingKg"],
  [Number.NaN, 180, "axleRatingKg"],
  [Number.POSITIVE_INFINITY, 180, "axleRatingKg"],
  [2000, 0, "topSpeedKmh"],
  [2000, -180, "topSpeedKmh"],
  [2000, Number.NaN, "topSpeedKmh"],
])("an axle of %d kg at %d km/h is refused at %s", (axleRatingKg, topSpeedKmh, path) => {
  expect(() => tyreFitness("285/65R18 116T", axleRatingKg, topSpeedKmh)).toThrow(
    expect.objectContaining({ code: "out-of-range", path }),
  );
});

test("a heavier axle or a faster vehicle never makes a tyre fit that did not", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 60, max: 130 }),
      fc.constantFrom("Q", "S", "T", "H", "V"),
      fc.double({ min: 500, max: 3500, noNaN: true }),
      fc.double({ min: 80, max: 260, noNaN: true }),
      (index, symbol, ratingKg, kmh) => {
        const designation = `285/65R18 ${index}${symbol}`;
        const light = tyreFitness(designation, ratingKg, kmh);
        const heavy = tyreFitness(designation, ratingKg + 10, kmh + 10);
        expect(Number.isFinite(light.axleCapacityKg) && Number.isFinite(light.speedKmh)).toBe(true);
        expect(!light.carries && heavy.carries).toBe(false);
        expect(!light.fastEnough && heavy.fastEnough).toBe(false);
      },
    ),
  );
});
