import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BreathingChange, ForecastQuestion } from "./forecast-question";
import { powerForecast } from "./power-forecast";

const small: BreathingChange = { displacementL: 2, volumetricEfficiency: 0.9 };

function asked(
  change: Partial<BreathingChange>,
  different: Partial<ForecastQuestion> = {},
): ForecastQuestion {
  return {
    baseline: {
      at: "crank",
      points: [
        { speedRpm: 3000, powerKw: 55 },
        { speedRpm: 6000, powerKw: 90 },
      ],
    },
    compressionRatio: 10.2,
    fuel: "petrol",
    injection: "port",
    breathingChange: { ...small, ...change },
    ...different,
  };
}
const at6000 = (change: Partial<BreathingChange>, different: Partial<ForecastQuestion> = {}) => {
  const point = powerForecast(asked(change, different)).points.at(-1);
  if (!point) throw new Error("no point");
  return point;
};
const kw = (torqueNm: number, rpm: number) => (torqueNm * rpm * Math.PI) / 30_000;

describe("an engine that breathes by itself", () => {
  test("makes its baseline when nothing is changed", () => {
    const { points, kind } = powerForecast(asked({}));
    expect(kind).toBe("breathing");
    for (const { expectedKw, baselineKw, lowKw, highKw } of points) {
      expect(expectedKw).toBeCloseTo(baselineKw, 9);
      expect(lowKw).toBeLessThan(expectedKw);
      expect(highKw).toBeGreaterThan(expectedKw);
    }
  });

  test("gains a little more than its air, because friction stays", () => {
    // Friction 1.8 bar of 2 L at 6,000 rpm: 180 × 2 ÷ 4π N·m; gross torque goes with the air (definitions).
    const friction = kw((180 * 2) / (4 * Math.PI), 6000);
    // The same exhaust takes 15 kPa × (1.03² − 1) more, of which 0.7 count.
    const exhaust = kw((0.7 * 15 * (1.03 ** 2 - 1) * 2) / (4 * Math.PI), 6000);
    const { expectedKw } = at6000({ fillingGain: 1.03 });
    expect(expectedKw).toBeCloseTo((90 + friction) * 1.03 - friction - exhaust, 9);
    expect(expectedKw / 90).toBeGreaterThan(1.03);
  });

  test("gets back 0.7 of what a freer exhaust no longer takes, growing with the square of the speed", () => {
    const saved = kw((0.7 * 10 * 2) / (4 * Math.PI), 6000);
    expect(at6000({ backPressureKPaAt6000: 5 }).expectedKw).toBeCloseTo(90 + saved, 9);
    const [at3000] = powerForecast(asked({ backPressureKPaAt6000: 5 })).points;
    expect((at3000?.expectedKw ?? 0) - 55).toBeCloseTo(saved / 8, 9);
  });

  test("gains by spark only what its standard map held back", () => {
    const held = { assumptions: { baselineRetardDeg: 5 } };
    expect(at6000({ retardDeg: 0 }).expectedKw).toBeCloseTo(90, 9);
    const { expectedKw, sparkRetardDeg } = at6000({ retardDeg: 1 }, held);
    // 1 − 0.0006 × 25 of the torque at best spark before, 1 − 0.0006 after, of the gross.
    const gross = 90 + kw((180 * 2) / (4 * Math.PI), 6000);
    expect(expectedKw).toBeCloseTo(90 + gross * ((1 - 0.0006) / (1 - 0.015) - 1), 9);
    expect(sparkRetardDeg).toBe(1);
  });

  test("loses on a hot day and up high, and says what limits it", () => {
    const { hotDay, points } = powerForecast(asked({}, { hotDay: { tempC: 43, pressureKPa: 90 } }));
    expect(hotDay?.peak.expectedKw).toBeLessThan(90 * 0.9);
    expect(points[0]).toMatchObject({ limit: "air", because: "The engine draws no more air at this speed." });
  });

  test("is held by injectors that are too small, and by a cap", () => {
    const injectors = {
      kind: "port-injectors",
      count: 4,
      staticFlowCm3PerMin: 120,
      ratedPressureKPa: 300,
      railKPa: 300,
      manifoldKPa: 0,
      dutyLimit: 0.85,
    } as const;
    const short = at6000({ fillingGain: 1.05 }, { fuelSupply: { stages: [injectors] } });
    expect(short).toMatchObject({ limit: "fuel" });
    expect(short.expectedKw).toBeLessThan(90);
    expect(at6000({}, { torqueCaps: [100] })).toMatchObject({ limit: "torque-cap", crankTorqueNm: 100 });
  });

  test("is refused on diesel, beside another change, and with figures that no engine has", () => {
    expect(() => powerForecast(asked({}, { fuel: "diesel" }))).toThrow(/spark ignition only/);
    const calibrationChange = { torqueRequestNm: 500, smokeLambda: 1.2, exhaustLimitC: 700 };
    expect(() => powerForecast(asked({}, { calibrationChange }))).toThrow(/exactly one change/);
    expect(() => powerForecast(asked({ fillingGain: 2 }))).toThrow(/breathingChange.fillingGain must be/);
  });

  test("never makes less for more air or a freer exhaust, and nothing that is no number", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.9, max: 1.15, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0.7, max: 1, noNaN: true }),
        (fillingGain, backPressureKPaAt6000, lambda) => {
          const one = at6000({ fillingGain, backPressureKPaAt6000, lambda });
          for (const value of [one.lowKw, one.expectedKw, one.highKw, one.fuelKgPerH, one.crankTorqueNm])
            expect(Number.isFinite(value)).toBe(true);
          const more = at6000({ fillingGain: fillingGain + 0.02, backPressureKPaAt6000, lambda });
          const freer = at6000({ fillingGain, backPressureKPaAt6000: backPressureKPaAt6000 / 2, lambda });
          expect(more.expectedKw).toBeGreaterThan(one.expectedKw);
          expect(freer.expectedKw).toBeGreaterThanOrEqual(one.expectedKw);
        },
      ),
    );
  });
});
