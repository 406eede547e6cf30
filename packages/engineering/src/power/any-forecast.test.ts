import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GivenAssumptions } from "./forecast-assumptions";
import type { ForecastQuestion } from "./forecast-question";
import { powerForecast } from "./power-forecast";
import { sampleForecast, samplePulley, samplePump } from "./sample-forecast";

describe("for any build", () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const builds: fc.Arbitrary<ForecastQuestion> = fc
    .record({
      compressionRatio: between(8, 14),
      fuel: fc.constantFrom("petrol" as const, "E10" as const, "E85" as const),
      injection: fc.constantFrom("port" as const, "direct" as const, "port-direct" as const),
      place: fc.constantFrom("hubs" as const, "wheels" as const, "crank" as const),
      power: between(0.3, 1.5),
      displacementLPerRev: between(0.8, 3.2),
      blowerPulleyMm: between(75, 200),
      stroke: fc.option(between(0.3, 3)),
      cap: fc.option(between(200, 1_500)),
    })
    .map(
      ({
        compressionRatio,
        fuel,
        injection,
        place,
        power,
        displacementLPerRev,
        blowerPulleyMm,
        stroke,
        cap,
      }) => ({
        baseline: {
          at: place,
          points: sampleForecast.baseline.points.map(({ speedRpm, powerKw }) => ({
            speedRpm,
            powerKw: powerKw * power,
          })),
        },
        compressionRatio,
        fuel,
        injection,
        blower: { ...samplePulley(blowerPulleyMm, displacementLPerRev), speedsRpm: [1_000, 3_300, 6_400] },
        fuelSupply:
          stroke === null ? null : { stages: [{ ...samplePump, displacementCm3PerCamRev: stroke }] },
        torqueCaps: cap === null ? [] : [cap],
        hotDay: { tempC: 45, pressureKPa: 97 },
      }),
    );

  const expected = (question: ForecastQuestion) =>
    powerForecast(question).points.map(({ expectedKw }) => expectedKw);

  test("low, expected and high are numbers in that order, caps hold, and the peak is the best point", () => {
    fc.assert(
      fc.property(builds, (question) => {
        const { points, peak, hotDay } = powerForecast(question);
        for (const point of [...points, ...(hotDay?.points ?? [])]) {
          for (const figure of Object.values(point)) {
            if (typeof figure === "number") expect(Number.isFinite(figure)).toBe(true);
          }
          expect(point.lowKw).toBeGreaterThanOrEqual(0);
          expect(point.lowKw).toBeLessThanOrEqual(point.expectedKw);
          expect(point.expectedKw).toBeLessThanOrEqual(point.highKw);
          const [cap] = question.torqueCaps ?? [];
          if (typeof cap === "number") expect(point.crankTorqueNm).toBeLessThanOrEqual(cap);
        }
        expect(peak.expectedKw).toBe(Math.max(...points.map(({ expectedKw }) => expectedKw)));
      }),
      { numRuns: 200 },
    );
  });

  const noLess = (question: ForecastQuestion, better: ForecastQuestion) => {
    const before = expected(question);
    expected(better).forEach((power, index) => {
      expect(power).toBeGreaterThanOrEqual((before[index] ?? Number.NaN) - 1e-9);
    });
  };

  test("better fuel, a lower ratio, more fuel or no cap never makes it weaker", () => {
    fc.assert(
      fc.property(builds, (question) => {
        const assume = (assumptions: GivenAssumptions) => ({ ...question, assumptions });
        noLess(assume({ octaneNumber: 95 }), assume({ octaneNumber: 98 }));
        noLess(question, { ...question, compressionRatio: question.compressionRatio - 1 });
        noLess(question, { ...question, torqueCaps: [] });
        noLess(question, { ...question, fuelSupply: null });
      }),
    );
  });

  test("a hotter, thinner day never makes a blown engine stronger", () => {
    fc.assert(
      fc.property(builds, (question) => {
        const { points, hotDay } = powerForecast(question);
        hotDay?.points.forEach(({ expectedKw, limit }, index) => {
          // Where fuel limits, both days burn the same, and the warmer charge even pushes a little more.
          if (limit === "fuel" || points[index]?.limit === "fuel") return;
          expect(expectedKw).toBeLessThanOrEqual((points[index]?.expectedKw ?? Number.NaN) + 1e-6);
        });
      }),
    );
  });
});
