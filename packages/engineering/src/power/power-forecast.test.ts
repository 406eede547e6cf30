import { describe, expect, test } from "vitest";
import { sampleBlower } from "../air/sample-blower";
import { fuelProperties } from "../fuel/fuel-properties";
import type { ForecastPoint, ForecastQuestion } from "./forecast-question";
import { powerForecast } from "./power-forecast";
import { forecastAt, sampleCalibration, sampleForecast, samplePulley, samplePump } from "./sample-forecast";

describe("from the maker's rating, told at the hubs", () => {
  const rated: ForecastQuestion = {
    ...sampleForecast,
    baseline: {
      at: "crank",
      points: [
        { speedRpm: 3_000, powerKw: 180 },
        { speedRpm: 6_000, powerKw: 298 },
      ],
    },
  };
  const atCrank = forecastAt(rated, 6_000);
  const atHubs = forecastAt({ ...rated, reportAt: "hubs" }, 6_000);

  test("is the same engine less the driveline, in a wider band", () => {
    expect(atHubs.crankTorqueNm).toBe(atCrank.crankTorqueNm);
    expect(atHubs.expectedKw).toBeCloseTo(atCrank.expectedKw * 0.95 - 22, 9);
    expect(atHubs.baselineKw).toBeCloseTo(298 * 0.95 - 22, 9);
    const width = (point: ForecastPoint) => (point.highKw - point.lowKw) / point.expectedKw;
    expect(width(atHubs)).toBeGreaterThan(width(atCrank));
    expect(
      powerForecast({ ...rated, blower: { ...sampleBlower, speedsRpm: [6_000] }, reportAt: "wheels" }).at,
    ).toBe("wheels");
  });

  test("and a measured baseline told where it was measured is left as it is", () => {
    expect(forecastAt(sampleForecast, 5_000).baselineKw).toBe(245);
  });
});

describe("what limits each speed", () => {
  test("the pump takes the top end, and says which stage", () => {
    const fuelSupply = { stages: [samplePump] };
    expect(forecastAt({ ...sampleForecast, fuelSupply }, 3_000).limit).toBe("air");
    const top = forecastAt({ ...sampleForecast, fuelSupply }, 6_000);
    expect(top.limit).toBe("fuel");
    expect(top.because).toContain("high-pressure pump");
    expect(top.expectedKw).toBeLessThan(forecastAt(sampleForecast, 6_000).expectedKw - 15);
    expect(top.fuelKgPerH).toBeCloseTo(133.6, 1);
  });

  test("a cap by gear holds the torque at the crank where it applies", () => {
    const torqueCaps = [{ torqueNm: 680, name: "Gearbox in gears 1 to 3", toRpm: 5_000 }, 2_000];
    const point = forecastAt({ ...sampleForecast, torqueCaps }, 4_000);
    expect(point).toMatchObject({ limit: "torque-cap", crankTorqueNm: 680 });
    expect(point.because).toContain("gears 1 to 3");
    expect(forecastAt({ ...sampleForecast, torqueCaps }, 5_500).limit).toBe("air");
  });

  test("an overspeeding blower and a hot charge are told, not refused", () => {
    expect(forecastAt({ ...sampleForecast, blower: samplePulley(70, 1.9) }, 6_000).limit).toBe(
      "blower-speed",
    );
    const hot = { ...sampleBlower, chargeCooler: null };
    expect(forecastAt({ ...sampleForecast, blower: hot }, 6_000).limit).toBe("charge-temperature");
    expect(forecastAt({ ...sampleForecast, compressionRatio: 13.5 }, 6_000).limit).toBe("knock");
  });

  test("a hot day costs air and spark", () => {
    const { hotDay, peak } = powerForecast({ ...sampleForecast, hotDay: { tempC: 45, pressureKPa: 100 } });
    if (!hotDay) throw new Error("A hot day was asked.");
    expect(hotDay.peak.expectedKw).toBeLessThan(peak.expectedKw * 0.9);
    const retard = (points: readonly ForecastPoint[]) => points.at(-1)?.sparkRetardDeg ?? Number.NaN;
    expect(hotDay.points.at(-1)?.manifoldTempC).toBeGreaterThan(80);
    expect(retard(hotDay.points) - retard(powerForecast(sampleForecast).points)).toBeCloseTo(3.5, 0);
  });
});

describe("a change of calibration alone", () => {
  const on = (
    change: Partial<NonNullable<ForecastQuestion["calibrationChange"]>>,
    more: Partial<ForecastQuestion> = {},
  ) =>
    powerForecast({
      ...sampleCalibration,
      ...more,
      calibrationChange: { torqueRequestNm: 900, smokeLambda: 1.2, exhaustLimitC: 1_000, ...change },
    }).points.map(({ limit }) => limit);

  test("each of its limits can be the one that binds", () => {
    expect(on({ torqueRequestNm: 300 })).toContain("torque-request");
    expect(on({})).toEqual(["smoke", "smoke", "smoke"]);
    expect(on({ exhaustLimitC: 680 })).toEqual([
      "exhaust-temperature",
      "exhaust-temperature",
      "exhaust-temperature",
    ]);
    expect(on({}, { torqueCaps: [250] })).toContain("torque-cap");
    expect(on({}, { fuelSupply: { stages: [{ ...samplePump, displacementCm3PerCamRev: 0.2 }] } })).toContain(
      "fuel",
    );
  });

  test("the demo ute gains, below its request and with a band, and less on a hot day", () => {
    const { points, kind, hotDay, peak } = powerForecast({
      ...sampleCalibration,
      hotDay: { tempC: 45, pressureKPa: 98 },
    });
    expect(kind).toBe("calibration");
    for (const point of points) {
      expect(point.expectedKw).toBeGreaterThan(point.baselineKw);
      expect(point.lowKw).toBeLessThan(point.highKw);
      expect(point.crankTorqueNm).toBeLessThanOrEqual(560);
    }
    expect(hotDay?.peak.expectedKw).toBeLessThan(peak.expectedKw);
  });
});

describe("questions that do not go together", () => {
  const { baseline } = sampleForecast;
  test.each<readonly [ForecastQuestion, string, string]>([
    [{ ...sampleForecast, blower: undefined }, "one-change", "blower"],
    [{ ...sampleForecast, ...sampleCalibration, fuel: "petrol" }, "one-change", "blower"],
    [{ ...sampleForecast, fuel: "diesel" }, "not-spark-ignition", "fuel"],
    [{ ...sampleCalibration, fuel: "petrol" }, "not-compression-ignition", "fuel"],
    [{ ...sampleForecast, compressionRatio: 0 }, "out-of-range", "compressionRatio"],
    [{ ...sampleForecast, compressionRatio: Number.NaN }, "out-of-range", "compressionRatio"],
    [{ ...sampleForecast, baseline: { at: "hubs", points: [] } }, "no-baseline", "baseline.points"],
    [
      { ...sampleForecast, baseline: { at: "hubs", points: [...baseline.points].reverse() } },
      "speeds-not-rising",
      "baseline.points[1].speedRpm",
    ],
    [
      { ...sampleForecast, baseline: { at: "hubs", points: [{ speedRpm: 3_000, powerKw: -150 }] } },
      "out-of-range",
      "baseline.points[0].powerKw",
    ],
    [
      { ...sampleForecast, blower: { ...sampleBlower, speedsRpm: [500] } },
      "outside-baseline",
      "blower.speedsRpm[0]",
    ],
    [{ ...sampleForecast, blower: { ...sampleBlower, speedsRpm: [] } }, "no-speeds", "blower.speedsRpm"],
    [
      { ...sampleForecast, blower: { ...sampleBlower, inletDropKPa: -1 } },
      "out-of-range",
      "blower.inletDropKPa",
    ],
    [{ ...sampleForecast, fuelSupply: { stages: [] } }, "no-stages", "fuelSupply.stages"],
    [{ ...sampleForecast, torqueCaps: [0] }, "out-of-range", "torqueCaps[0]"],
    [{ ...sampleForecast, hotDay: { tempC: 45, pressureKPa: 1_013 } }, "out-of-range", "hotDay.pressureKPa"],
    [
      { ...sampleForecast, assumptions: { meshEfficiency: 1.1 } },
      "out-of-range",
      "assumptions.meshEfficiency",
    ],
  ])("%# is refused as %s", (question, code, path) => {
    expect(() => powerForecast(question)).toThrow(expect.objectContaining({ code, path }));
  });
});

describe("assumptions", () => {
  test("come back as used, given ones in their place", () => {
    const { assumptions } = powerForecast({ ...sampleForecast, assumptions: { boostedLambdaAt6000: 0.78 } });
    expect(assumptions).toMatchObject({ boostedLambdaAt6000: 0.78, meshEfficiency: 0.95, octaneNumber: 98 });
    expect(powerForecast({ ...sampleForecast, fuel: "E10" }).assumptions.octaneNumber).toBe(95);
  });

  test("heat of the fuel burnt covers the work, at a believable efficiency (conservation of energy)", () => {
    for (const { speedRpm, crankTorqueNm, fuelKgPerH } of powerForecast(sampleForecast).points) {
      if (speedRpm < 2_000) continue;
      const work = (crankTorqueNm * 2 * Math.PI * speedRpm) / 60_000;
      const efficiency = work / ((fuelKgPerH / 3.6) * fuelProperties.petrol.heatMJPerKg);
      expect(efficiency).toBeGreaterThan(0.18);
      expect(efficiency).toBeLessThan(0.4);
    }
  });
});
