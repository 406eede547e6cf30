import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { acceleration } from "./acceleration";
import type { AccelerationQuestion } from "./acceleration-question";
import { sampleWagon } from "./sample-wagon";

const GRAVITY = 9.80665;
const to100 = (change: Partial<AccelerationQuestion>) =>
  acceleration({ ...sampleWagon, targetsKmh: [100], distancesM: [], ...change }).times[0]?.s ?? Number.NaN;

/** The wagon with its power, mass and the road drawn at random. */
const questions = fc.record({
  massKg: fc.double({ min: 900, max: 3500, noNaN: true }),
  power: fc.double({ min: 0.4, max: 2.5, noNaN: true }),
  slopePct: fc.double({ min: -6, max: 8, noNaN: true }),
  headwindKmh: fc.double({ min: -40, max: 40, noNaN: true }),
  gripCoefficient: fc.double({ min: 0.3, max: 1.4, noNaN: true }),
  shiftTimeS: fc.double({ min: 0, max: 0.8, noNaN: true }),
  drivenAxles: fc.constantFrom("front", "rear", "all"),
  gears: fc.constantFrom(
    [3.6, 2.1, 1.4, 1, 0.8],
    [4.9, 3.1, 1.98, 1.37, 1, 0.87, 0.78],
    [2.9, 1.6, 1],
    [1.5],
  ),
  frontLoadPct: fc.integer({ min: 40, max: 65 }),
});

function asked({
  power,
  ...change
}: { readonly power: number } & Partial<AccelerationQuestion>): AccelerationQuestion {
  return {
    ...sampleWagon,
    ...change,
    curve: sampleWagon.curve.map(({ speedRpm, powerKw }) => ({ speedRpm, powerKw: powerKw * power })),
  };
}

describe("energy", () => {
  test("what drives is what moves, climbs, rolls and parts the air", () => {
    fc.assert(
      fc.property(questions, (drawn) => {
        const question = asked(drawn);
        const { trace } = acceleration(question, { stepS: 0.01, traceS: 0.01 });
        const slope = Math.atan(question.slopePct / 100);
        const steady =
          question.massKg * GRAVITY * (question.rollingCoefficient * Math.cos(slope) + Math.sin(slope));
        const wind = (question.headwindKmh ?? 0) / 3.6;
        const air = (kmh: number) => {
          const through = kmh / 3.6 + wind;
          return 0.5 * question.airDensityKgPerM3 * question.dragAreaM2 * through * Math.abs(through);
        };
        let [driven, resisted] = [0, 0];
        trace.slice(1).forEach((point, at) => {
          const before = trace[at] ?? point;
          const way = point.m - before.m;
          driven += ((point.driveN + before.driveN) / 2) * way;
          resisted += (steady + (air(point.kmh) + air(before.kmh)) / 2) * way;
        });
        const last = trace.at(-1)?.kmh ?? 0;
        const moving = 0.5 * question.massKg * question.rotatingFactor * (last / 3.6) ** 2;
        // A trapezoid over each hundredth of a second; a vehicle that cannot start moves nothing.
        expect(Math.abs(driven - resisted - moving)).toBeLessThanOrEqual(0.003 * driven + 1);
      }),
      { numRuns: 60 },
    );
  });
});

describe("the step", () => {
  const at = (stepS: number) => acceleration({ ...sampleWagon, rollOutM: 0.3048 }, { stepS, traceS: 1 });
  const figures = (stepS: number) => {
    const { times, distances } = at(stepS);
    return [...times, ...distances].map(({ s }) => s ?? Number.NaN);
  };

  test("halving it moves no time by more than a ten-thousandth of a second, quartering it by less still", () => {
    const [used, half, quarter] = [figures(0.02), figures(0.01), figures(0.005)];
    used.forEach((seconds, each) => {
      expect(Math.abs(seconds - (half[each] ?? 0))).toBeLessThan(1e-4);
      expect(Math.abs((half[each] ?? 0) - (quarter[each] ?? 0))).toBeLessThan(2e-5);
    });
  });
});

describe("the right way", () => {
  test("mass, slope, headwind and shift time cost time; power and grip save it", () => {
    fc.assert(
      fc.property(questions, (drawn) => {
        const base = asked({
          ...drawn,
          slopePct: Math.min(drawn.slopePct, 3),
          targetsKmh: [60],
          distancesM: [],
        });
        const time = (change: Partial<AccelerationQuestion>) =>
          acceleration({ ...base, ...change }).times[0]?.s ?? Number.POSITIVE_INFINITY;
        const plain = time({});
        // Where grip holds it back, a heavier vehicle has more of it, and the air slows it less.
        const gripped = { drivenAxles: "all", gripCoefficient: 5 } as const;
        expect(time({ ...gripped, massKg: base.massKg * 1.1 })).toBeGreaterThanOrEqual(time(gripped) - 1e-4);
        expect(time({ slopePct: base.slopePct + 1 })).toBeGreaterThanOrEqual(plain - 1e-4);
        expect(time({ headwindKmh: 80 })).toBeGreaterThanOrEqual(plain - 1e-4);
        expect(time({ drivelineEfficiency: 0.7 })).toBeGreaterThanOrEqual(plain - 1e-4);
        expect(time({ gripCoefficient: base.gripCoefficient * 1.1 })).toBeLessThanOrEqual(plain + 1e-4);
      }),
      { numRuns: 60 },
    );
  });

  test("every figure of a valid question is a number or null, and phases cover the run without gaps", () => {
    fc.assert(
      fc.property(questions, (drawn) => {
        const answer = acceleration(asked(drawn));
        const numbers = JSON.parse(JSON.stringify(answer), (_, value) => value ?? 0);
        expect(numbers).toEqual(JSON.parse(JSON.stringify(answer).replaceAll("null", "0")));
        expect(
          answer.trace.every(({ s, kmh, m, driveN }) => [s, kmh, m, driveN].every(Number.isFinite)),
        ).toBe(true);
        answer.phases.forEach(({ fromS, toS }, at) => {
          expect(toS).toBeGreaterThan(fromS);
          expect(fromS).toBe(answer.phases[at - 1]?.toS ?? 0);
        });
        const reached = answer.times.filter(({ s }) => s !== null).map(({ s }) => s ?? 0);
        expect(reached).toEqual([...reached].sort((a, b) => a - b));
      }),
      { numRuns: 60 },
    );
  });

  test("rear drive outruns front drive on one surface, and all-wheel drive outruns both", () => {
    const time = (drivenAxles: "front" | "rear" | "all") => to100({ drivenAxles, gripCoefficient: 0.5 });
    expect(time("rear")).toBeLessThan(time("front"));
    expect(time("all")).toBeLessThan(time("rear"));
  });

  test("a roll-out takes its own time off every time, and shows it", () => {
    const plain = acceleration(sampleWagon);
    const rolled = acceleration({ ...sampleWagon, rollOutM: 0.3048 });
    expect(plain.rollOut).toBeNull();
    expect(rolled.rollOut?.m).toBe(0.3048);
    [...rolled.times, ...rolled.distances].forEach(({ s }, at) => {
      const before = [...plain.times, ...plain.distances][at]?.s ?? 0;
      expect(before - (s ?? 0)).toBeCloseTo(rolled.rollOut?.s ?? 0, 9);
    });
  });
});

describe("how a run ends", () => {
  test("goals keep the order they were asked in", () => {
    const answer = acceleration({ ...sampleWagon, targetsKmh: [100, 60], distancesM: [400, 100] });
    expect(answer.times.map(({ targetKmh }) => targetKmh)).toEqual([100, 60]);
    expect(answer.distances.map(({ m }) => m)).toEqual([400, 100]);
    expect(answer.end.because).toBe("all-reached");
  });

  test("a speed beyond the power is never reached, but the distance is", () => {
    const answer = acceleration({ ...sampleWagon, targetsKmh: [500], distancesM: [20_000] });
    expect(answer.end.because).toBe("top-speed");
    expect(answer.times[0]?.s).toBeNull();
    expect(answer.distances[0]?.kmh).toBeCloseTo(answer.end.kmh, 6);
  });

  test("a single short gear ends at the highest engine speed", () => {
    const answer = acceleration({ ...sampleWagon, gears: [4.9], targetsKmh: [100], distancesM: [1000] });
    expect(answer.end.because).toBe("rev-limit");
    expect(answer.trace.at(-1)?.engineRpm).toBeCloseTo(6000, 3);
    expect(answer.distances[0]?.s).toBeGreaterThan(answer.end.s);
  });

  test("a slope steeper than the grip cannot be climbed", () => {
    const answer = acceleration({ ...sampleWagon, slopePct: 90, gripCoefficient: 0.5 });
    expect(answer.end).toMatchObject({ because: "cannot-start", kmh: 0, m: 0 });
    expect(answer.times.map(({ s }) => s)).toEqual([null, null]);
    expect(answer.distances.map(({ s }) => s)).toEqual([null, null]);
  });
});

describe("questions that cannot be", () => {
  test.each([
    [{ massKg: 0 }, "out-of-range", "massKg"],
    [{ massKg: Number.NaN }, "out-of-range", "massKg"],
    [{ rotatingFactor: 0.9 }, "out-of-range", "rotatingFactor"],
    [{ drivelineEfficiency: 1.01 }, "out-of-range", "drivelineEfficiency"],
    [{ finalDrive: Number.POSITIVE_INFINITY }, "out-of-range", "finalDrive"],
    [{ shiftTimeS: -1 }, "out-of-range", "shiftTimeS"],
    [{ gripCoefficient: 0 }, "out-of-range", "gripCoefficient"],
    [{ tyre: "big" }, "unknown-designation", "tyre"],
    [{ gears: [] }, "no-gears", "gears"],
    [{ gears: [1, 2] }, "gears-not-falling", "gears[1]"],
    [{ gears: [3, 0] }, "out-of-range", "gears[1]"],
    [{ curve: [] }, "empty-curve", "curve"],
    [{ curve: [{ speedRpm: 1000, powerKw: 50 }] }, "empty-curve", "curve"],
    [{ curve: sampleWagon.curve.toReversed() }, "speeds-not-rising", "curve[1].speedRpm"],
    [{ curve: [{ speedRpm: 0, powerKw: 5 }, ...sampleWagon.curve] }, "power-at-rest", "curve[0].powerKw"],
    [{ launchSpeedRpm: 9000 }, "out-of-range", "launchSpeedRpm"],
    [{ targetsKmh: [], distancesM: [] }, "nothing-asked", "targetsKmh"],
    [{ targetsKmh: [0] }, "out-of-range", "targetsKmh[0]"],
    [{ distancesM: [0.2], rollOutM: 0.3 }, "within-roll-out", "distancesM[0]"],
    [{ targetsKmh: [1], rollOutM: 5 }, "within-roll-out", "targetsKmh[0]"],
  ] as const)("%j is refused as %s at %s", (change, code, path) => {
    expect(() => acceleration({ ...sampleWagon, ...change })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });
});

test("a curve that begins with nothing at rest is the curve without that point", () => {
  const curve = [{ speedRpm: 0, powerKw: 0 }, ...sampleWagon.curve];
  expect(acceleration({ ...sampleWagon, curve })).toEqual(acceleration(sampleWagon));
});

describe("torque held in lower gears", () => {
  const held = (torqueNm: number) =>
    [1000, 6000].map((speedRpm) => ({ speedRpm, powerKw: (torqueNm * speedRpm * Math.PI) / 30_000 }));

  test("in the gear of the run is constant force: m·v/F", () => {
    const free = { rollingCoefficient: 0, dragAreaM2: 0, rotatingFactor: 1, drivelineEfficiency: 1 };
    const s = to100({ ...free, gears: [1.37], gearCurves: [{ gear: 1, curve: held(300) }] });
    // Rolling circumference 3.05 × overall diameter (508 + 2 × 165 mm); force is torque × ratio over the rolling radius.
    const radiusM = (3.05 * 0.838) / (2 * Math.PI);
    const forceN = (300 * 1.37 * sampleWagon.finalDrive) / radiusM;
    expect(s).toBeCloseTo((2700 * (100 / 3.6)) / forceN, 3);
  });

  test("costs time in the gears where it is held and nothing in the others", () => {
    const gearCurves = [1, 2, 3].map((gear) => ({ gear, curve: held(350) }));
    expect(to100({ gearCurves })).toBeGreaterThan(to100({}) + 0.5);
    expect(to100({ gearCurves: [{ gear: 7, curve: held(350) }] })).toBe(to100({}));
    const none = [1, 2].map((gear) => ({ gear, curve: sampleWagon.curve }));
    expect(to100({ gearCurves: none })).toBe(to100({}));
  });

  test("is refused for a gear that is not there or named twice", () => {
    for (const gears of [[0], [8], [1.5], [2, 2]])
      expect(() => to100({ gearCurves: gears.map((gear) => ({ gear, curve: held(350) })) })).toThrow(
        /gearCurves\[\d\]\.gear|Name each gear/,
      );
  });
});
