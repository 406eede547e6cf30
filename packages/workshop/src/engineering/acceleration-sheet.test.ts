import { describe, expect, test } from "vitest";
import { accelerationSheet } from "./acceleration-sheet";
import { roadCurve } from "./road-curve";
import type { RoadPower } from "./road-power";
import type { RoadBuild } from "./road-question";
import { powerShareAt } from "./thin-air";

/** An invented sedan. */
const build: RoadBuild = {
  model: { driven: "all" },
  driveline: { gearRatios: [4, 2.4, 1.5, 1], finalDrive: 3.5, transferRatio: 1, shiftTimeS: 0.2 },
  masses: {
    kerbFrontKg: 800,
    kerbRearKg: 725,
    frontRatingKg: 1200,
    rearRatingKg: 1200,
    gvmKg: 2200,
    gcmKg: 3500,
    brakedTowKg: 1500,
    unbrakedTowKg: 750,
    ballLimitKg: 150,
    wheelbaseMm: 2700,
    ballBehindRearAxleMm: 1100,
    gravityHeightMm: 550,
    seatRows: [{ seats: 2, frontAxleShare: 0.5 }],
  },
  road: {
    topSpeedKmh: 220,
    dragCoefficient: 0.32,
    frontalAreaM2: 2.2,
    rollingCoefficient: 0.012,
    rotatingFactor: 1.06,
    gripCoefficient: 0.9,
  },
  tyres: { standard: "255/40R18 95Y", fitted: "255/40R18 95Y", isChanged: false },
  items: [],
  given: {},
  siteAltitudeM: 0,
};
const noLoss = { meshEfficiency: 1, dragKwAt6000: 0 };
const curve = (times: number, caps: Parameters<typeof roadCurve>[1] = []) =>
  roadCurve(
    [
      { speedRpm: 1500, powerKw: 50 * times },
      { speedRpm: 4000, powerKw: 150 * times },
      { speedRpm: 6000, powerKw: 200 * times },
    ],
    caps,
    noLoss,
  );
const standard: RoadPower = {
  isDiesel: false,
  before: curve(1),
  after: null,
  sentences: ["The engine stays as it is."],
};
const boosted: RoadPower = {
  isDiesel: false,
  before: curve(1),
  after: { low: curve(1.3), expected: curve(1.4), high: curve(1.5) },
  sentences: [],
};
const row = (sheet: ReturnType<typeof accelerationSheet>, id: string) =>
  sheet.rows.find((each) => each.id === id);

describe("acceleration before and after", () => {
  test("with nothing chosen, before and after are one, and the driver is in it", () => {
    const sheet = accelerationSheet(build, standard);
    expect(sheet).toMatchObject({ isChanged: false, massBeforeKg: 1600, massAfterKg: 1600 });
    expect(sheet.rows.map(({ id, difference }) => [id, difference?.expected])).toEqual([
      ["to-100", 0],
      ["80-to-120", 0],
      ["400-m", 0],
    ]);
  });

  test("a single time is told a fifth to either side, the difference by a fifth of itself beyond the forecast's band", () => {
    const sheet = accelerationSheet(build, boosted);
    for (const each of sheet.rows) {
      const { before, after, difference } = each;
      if (!before || !after || !difference) throw new Error(`${each.id} is not reached`);
      expect(before.low).toBeCloseTo(0.8 * before.expected, 9);
      expect(before.high).toBeCloseTo(1.2 * before.expected, 9);
      expect(after.low).toBeLessThan(after.expected);
      expect(difference.expected).toBeCloseTo(after.expected - before.expected, 9);
      expect(difference.low).toBeLessThan(difference.expected);
      expect(difference.high).toBeLessThan(0);
      expect(difference.high - difference.low).toBeLessThan(after.high - after.low);
      // after.low is 0.8 of the run with the most power; the difference is 1.2 of that run's own.
      expect(difference.low).toBeCloseTo(1.2 * (after.low / 0.8 - before.expected), 9);
    }
  });

  test("the first foot is told apart, by the closed form of constant force", () => {
    const { rollOut } = accelerationSheet(build, standard);
    // Grip holds it: 0.9 × 9.80665 less 0.012 of rolling, over 1.06; s = ½·a·t².
    const a = ((0.9 - 0.012) * 9.80665) / 1.06;
    expect(rollOut?.beforeS).toBeCloseTo(Math.sqrt((2 * 0.3048) / a), 2);
  });

  test("mass, tyres and final drive of the build are in the after, the trailer is not", () => {
    const heavy = { code: "bar", name: "bar", massKg: 120, chassis: { masses: { frontAxleShare: 1.2 } } };
    const towing = { code: "tow", name: "tow", massKg: 150, chassis: { masses: { trailerKg: 1500 } } };
    const sheet = accelerationSheet({ ...build, items: [heavy, towing] }, standard);
    expect(sheet).toMatchObject({ massBeforeKg: 1600, massAfterKg: 1720, isChanged: true });
    expect(row(sheet, "80-to-120")?.difference?.low).toBeGreaterThan(0);
    const shorter = { code: "fd", name: "fd", massKg: 0, chassis: { driveline: { finalDrive: 4.2 } } };
    expect(accelerationSheet({ ...build, items: [shorter] }, standard).isChanged).toBe(true);
  });

  test("a speed that is never reached has no time, and no difference", () => {
    const weak: RoadPower = { ...standard, before: curve(0.1) };
    const sheet = accelerationSheet(build, weak);
    expect(row(sheet, "80-to-120")).toMatchObject({ before: null, after: null, difference: null });
    expect(row(sheet, "400-m")?.before?.expected).toBeGreaterThan(20);
  });

  test("what it rests on is always told", () => {
    const { assumptions } = accelerationSheet(build, standard);
    expect(assumptions[0]).toBe("The engine stays as it is.");
    expect(assumptions.join(" ")).toMatch(/Driver alone.*grip 0\.9.*about a fifth/);
  });
});

describe("torque held in lower gears", () => {
  test("costs time where the gear is used, and is no more than the hubs get of it", () => {
    const caps = [{ torqueNm: 300, gears: [1, 2] }];
    const held: RoadPower = { ...standard, before: curve(1.4, caps) };
    const free: RoadPower = { ...standard, before: curve(1.4) };
    const to100 = (power: RoadPower) => row(accelerationSheet(build, power), "to-100")?.before?.expected ?? 0;
    expect(to100(held)).toBeGreaterThan(to100(free) + 0.3);
    const [first] = curve(1.4, caps).gearCurves;
    // 300 N·m at 4,000 rpm are 125.7 kW; the curve there has 210.
    expect(first?.curve[1]?.powerKw).toBeCloseTo((300 * 4000 * Math.PI) / 30_000, 9);
  });
});

describe("the road that times are told for", () => {
  const to100 = (change: Partial<RoadBuild>, power = standard) =>
    row(accelerationSheet({ ...build, ...change }, power), "to-100")?.before?.expected ?? Number.NaN;

  test("is level and still at the site's altitude, and says so", () => {
    const sheet = accelerationSheet({ ...build, siteAltitudeM: 60 }, standard);
    expect(sheet.road.map(({ name, used, isChanged }) => [name, used, isChanged])).toEqual([
      ["roadSlopePct", 0, false],
      ["roadHeadwindKmh", 0, false],
      ["roadAltitudeM", 60, false],
    ]);
    expect(sheet.assumptions.join(" ")).toContain("level and dry, no wind, 25 °C at 60 m");
  });

  test("costs time uphill, against the wind and high up, and is told where it was changed", () => {
    const usual = to100({});
    expect(to100({ given: { roadSlopePct: 6 } })).toBeGreaterThan(usual + 0.3);
    expect(to100({ given: { roadSlopePct: -6 } })).toBeLessThan(usual);
    expect(to100({ given: { roadHeadwindKmh: 40 } })).toBeGreaterThan(usual);
    expect(to100({ given: { roadAltitudeM: 1500 } })).toBeGreaterThan(usual + 0.3);
    expect(to100({ siteAltitudeM: 1500 })).toBe(to100({ given: { roadAltitudeM: 1500 } }));
    const sheet = accelerationSheet({ ...build, given: { roadSlopePct: 6, roadHeadwindKmh: -20 } }, standard);
    expect(sheet.assumptions.join(" ")).toContain("6 % uphill, dry, 20 km/h of wind from behind");
  });

  test("takes from a turbo-diesel less of its power than from an engine that breathes by itself", () => {
    const high = { given: { roadAltitudeM: 2000 } };
    expect(to100(high, { ...standard, isDiesel: true })).toBeLessThan(to100(high));
  });

  test("leaves at 1,500 m what ISO 2533 has of the pressure, less the friction that stays", () => {
    // 84.56 of 101.325 kPa (ISO 2533:1975, from memory); 1.18 × 0.8346 − 0.18.
    expect(powerShareAt(1500, false)).toBeCloseTo(0.8048, 3);
    expect(powerShareAt(0, true)).toBe(1);
  });
});
