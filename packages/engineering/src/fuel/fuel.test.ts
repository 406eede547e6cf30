import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainFuelShortfall } from "./explain-fuel-shortfall";
import { type FuelDemandQuestion, fuelDemand } from "./fuel-demand";
import { fuelHeadroom } from "./fuel-headroom";
import { fuels } from "./fuel-properties";
import type { DirectInjectors, FuelStage, HighPressurePump, PortInjectors, TankPump } from "./fuel-stage";
import { fuelSupply } from "./fuel-supply";

const tank: TankPump = {
  kind: "tank-pump",
  points: [
    { pressureKPa: 300, flowLPerH: 340 },
    { pressureKPa: 600, flowLPerH: 240 },
  ],
  systemPressureKPa: 500,
};
/** Three strokes of 0.393 cm³ per turn of the cam: the invented demo engine's pump. */
const pump: HighPressurePump = {
  kind: "high-pressure-pump",
  displacementCm3PerCamRev: 1.179,
  volumetricEfficiency: [
    { speedRpm: 3_000, value: 0.9 },
    { speedRpm: 6_000, value: 0.845 },
  ],
};
const port: PortInjectors = {
  kind: "port-injectors",
  count: 8,
  staticFlowCm3PerMin: 300,
  ratedPressureKPa: 300,
  railKPa: 450,
  manifoldKPa: 60,
  dutyLimit: 0.85,
};
const direct: DirectInjectors = {
  kind: "direct-injectors",
  count: 8,
  staticFlowGPerS: 17,
  ratedPressureKPa: 10_000,
  railKPa: 20_000,
  cylinderKPa: 500,
  windowDeg: 240,
  deadTimeMs: 0.3,
};

function limitOf(...stages: readonly FuelStage[]) {
  return fuelSupply({ fuel: "petrol", speedRpm: 6_000, stages });
}

function amount(stage: FuelStage): number {
  return limitOf(stage).limit.fuelKgPerH;
}

describe("which stage limits", () => {
  test("with direct injection alone it is the smallest of pump, injectors and tank", () => {
    const { stages, limit } = limitOf(tank, pump, direct);
    expect(stages.map(({ path }) => path)).toEqual(["series", "direct", "direct"]);
    expect(limit).toEqual({ kind: "high-pressure-pump", fuelKgPerH: amount(pump) });
  });

  test("a port branch adds to the pump, instead of being condemned as a smaller stage", () => {
    const bigTank = { ...tank, points: [{ pressureKPa: 500, flowLPerH: 600 }] };
    const { limit } = limitOf(bigTank, pump, direct, port);
    expect(limit.fuelKgPerH).toBe(amount(port) + amount(pump));
    // The smallest stage of the larger branch.
    expect(limit.kind).toBe("high-pressure-pump");
    expect(limitOf(tank, pump, direct, port).limit).toEqual({ kind: "tank-pump", fuelKgPerH: amount(tank) });
  });

  test("a stage goes where its path says", () => {
    const second: FuelStage = { ...tank, path: "port", points: [{ pressureKPa: 500, flowLPerH: 50 }] };
    const { stages, limit } = limitOf(
      { ...tank, points: [{ pressureKPa: 500, flowLPerH: 900 }] },
      second,
      pump,
    );
    expect(stages[1]?.path).toBe("port");
    expect(limit.fuelKgPerH).toBe(50 * 0.745 + amount(pump));
  });

  test("series alone, and branches alone", () => {
    expect(limitOf(tank).limit.fuelKgPerH).toBeCloseTo((340 - (100 * 2) / 3) * 0.745, 9);
    expect(limitOf(port).limit.kind).toBe("port-injectors");
  });

  test("a window that the dead time eats passes nothing, and is no error", () => {
    const { stages, limit } = limitOf({ ...direct, windowDeg: 10, deadTimeMs: 1 });
    expect(stages[0]).toMatchObject({ fuelKgPerH: 0, windowPct: 0 });
    expect(limit.fuelKgPerH).toBe(0);
  });
});

describe("the cam pump at another rail pressure", () => {
  const at = (railKPa: number, lossPctPer10MPa = 2) =>
    amount({ ...pump, railPressure: { railKPa, ratedKPa: 15_000, lossPctPer10MPa } });

  test("delivers as told at its rated pressure, less above, more below, and never more than its strokes", () => {
    expect(at(15_000)).toBe(amount(pump));
    // 0.845 of the stroke at 6,000 rpm, less 2 % of the stroke for 10 MPa more.
    expect(at(25_000) / amount(pump)).toBeCloseTo(0.825 / 0.845, 12);
    expect(at(5_000) / amount(pump)).toBeCloseTo(0.865 / 0.845, 12);
    expect(at(400_000, 20)).toBe(0);
    expect(at(100, 20) / amount(pump)).toBeCloseTo(1 / 0.845, 12);
  });

  test("per working cycle: a cycle's fuel is the flow over half the revolutions", () => {
    // 1.179 cm³ per cam turn is one turn of the cam per cycle of a four-stroke: 0.845 of it, at 0.745 kg/L.
    const mgPerCycle = (amount(pump) * 1e6) / (3_000 * 60);
    expect(mgPerCycle).toBeCloseTo(1.179 * 0.845 * 745, 9);
  });
});

describe("headroom over speed (figures of common practice, no published source)", () => {
  const air = Array.from({ length: 31 }, (_, at) => {
    const speedRpm = 3_000 + at * 100;
    return { speedRpm, airMassFlowKgPerS: (0.476 * speedRpm * (0.88 + (0.04 * at) / 30)) / (6_000 * 0.92) };
  });
  const sweepLambda = [
    { speedRpm: 3_000, value: 0.88 },
    { speedRpm: 6_000, value: 0.8 },
  ];
  const headroom = fuelHeadroom({
    fuel: "petrol",
    stages: [tank, pump, direct],
    air,
    sweepLambda,
    sustainedLambda: 0.77,
  });

  test("the cam pump runs short at about 5,000, by 8 to 9 % at 6,000", () => {
    const { shortfall } = headroom.sweep;
    if (!shortfall) throw new Error("The pump should run short.");
    expect(shortfall.kind).toBe("high-pressure-pump");
    expect(shortfall.fromSpeedRpm).toBeGreaterThan(4_600);
    expect(shortfall.fromSpeedRpm).toBeLessThan(5_200);
    expect(shortfall.shortBy).toBeGreaterThan(0.075);
    expect(shortfall.shortBy).toBeLessThan(0.095);
  });

  test("held load asks for more than a sweep, and runs short earlier", () => {
    expect(headroom.sustained.shortfall?.fromSpeedRpm).toBeLessThan(
      headroom.sweep.shortfall?.fromSpeedRpm ?? 0,
    );
    headroom.sweep.points.forEach(({ headroom: sweep }, at) => {
      expect(headroom.sustained.points[at]?.headroom).toBeLessThan(sweep);
    });
  });

  test("with every efficiency and the mixture constant it is short everywhere or nowhere", () => {
    const flat = air.map(({ speedRpm }) => ({ speedRpm, airMassFlowKgPerS: (0.476 * speedRpm) / 6_000 }));
    const constant = { ...pump, volumetricEfficiency: 0.845 };
    const { sweep } = fuelHeadroom({
      fuel: "petrol",
      stages: [constant],
      air: flat,
      sweepLambda: 0.8,
      sustainedLambda: 0.8,
    });
    const shares = sweep.points.map((point) => point.headroom);
    expect(Math.max(...shares) - Math.min(...shares)).toBeLessThan(1e-12);
  });

  test("a bigger pump leaves no shortfall", () => {
    const bigger = { ...pump, displacementCm3PerCamRev: 1.6 };
    const { sweep } = fuelHeadroom({
      fuel: "petrol",
      stages: [bigger, direct],
      air,
      sweepLambda,
      sustainedLambda: 0.77,
    });
    expect(sweep.shortfall).toBeNull();
  });

  test("in words", () => {
    expect(explainFuelShortfall({ kind: "high-pressure-pump", fromSpeedRpm: 5_112, shortBy: 0.0871 })).toBe(
      "high-pressure pump from 5,100 rpm: short by 9 %",
    );
    expect(explainFuelShortfall({ kind: "tank-pump", fromSpeedRpm: 980, shortBy: 0.004 })).toBe(
      "tank pump from 1,000 rpm: short by less than 1 %",
    );
  });
});

describe("questions that cannot be meant", () => {
  const nan = Number.NaN;
  test.each<readonly [Partial<FuelDemandQuestion>, string]>([
    [{}, "one-way"],
    [{ brakePowerKw: 300 }, "one-way"],
    [{ lambda: 0.8 }, "one-way"],
    [{ brakePowerKw: 300, bsfcGPerKwh: 340, lambda: 0.8 }, "one-way"],
    [{ brakePowerKw: 300, bsfcGPerKwh: 340, airMassFlowKgPerS: 0.3, lambda: 0.8 }, "one-way"],
    [{ brakePowerKw: -1, bsfcGPerKwh: 340 }, "out-of-range"],
    [{ brakePowerKw: nan, bsfcGPerKwh: 340 }, "out-of-range"],
    [{ airMassFlowKgPerS: 0.3, lambda: 0 }, "out-of-range"],
    [{ airMassFlowKgPerS: Number.POSITIVE_INFINITY, lambda: 1 }, "out-of-range"],
  ])("demand %j is refused as %s", (question, code) => {
    expect(() => fuelDemand({ fuel: "petrol", ...question })).toThrow(expect.objectContaining({ code }));
  });

  test.each<readonly [readonly FuelStage[], string, string]>([
    [[], "no-stages", "stages"],
    [[{ ...tank, systemPressureKPa: 601 }], "outside-pump-curve", "stages[0].systemPressureKPa"],
    [[{ ...tank, points: [] }], "empty-curve", "stages[0].points"],
    [
      [{ ...tank, points: [...tank.points].reverse() }],
      "pressures-not-rising",
      "stages[0].points[1].pressureKPa",
    ],
    [[tank, { ...pump, volumetricEfficiency: 1.01 }], "out-of-range", "stages[1].volumetricEfficiency"],
    [[{ ...pump, volumetricEfficiency: [] }], "empty-curve", "stages[0].volumetricEfficiency"],
    [[{ ...pump, displacementCm3PerCamRev: 0 }], "out-of-range", "stages[0].displacementCm3PerCamRev"],
    [[{ ...pump, camRatio: -0.5 }], "out-of-range", "stages[0].camRatio"],
    [
      [{ ...pump, railPressure: { railKPa: 0, ratedKPa: 15_000, lossPctPer10MPa: 1 } }],
      "out-of-range",
      "stages[0].railPressure.railKPa",
    ],
    [
      [{ ...pump, railPressure: { railKPa: 20_000, ratedKPa: 15_000, lossPctPer10MPa: -1 } }],
      "out-of-range",
      "stages[0].railPressure.lossPctPer10MPa",
    ],
    [[{ ...port, railKPa: 60 }], "no-injection-pressure", "stages[0].railKPa"],
    [[{ ...port, count: 7.5 }], "not-whole", "stages[0].count"],
    [[{ ...port, dutyLimit: 1.1 }], "out-of-range", "stages[0].dutyLimit"],
    [[{ ...direct, cylinderKPa: 21_000 }], "no-injection-pressure", "stages[0].railKPa"],
    [[{ ...direct, deadTimeMs: nan }], "out-of-range", "stages[0].deadTimeMs"],
  ])("supply %j is refused as %s", (stages, code, path) => {
    expect(() => fuelSupply({ fuel: "petrol", speedRpm: 6_000, stages })).toThrow(
      expect.objectContaining({ code, path }),
    );
  });

  test("air over speeds that do not rise", () => {
    const air = [
      { speedRpm: 4_000, airMassFlowKgPerS: 0.3 },
      { speedRpm: 3_000, airMassFlowKgPerS: 0.2 },
    ];
    const question = {
      fuel: "petrol",
      stages: [tank],
      air,
      sweepLambda: 0.8,
      sustainedLambda: 0.77,
    } as const;
    expect(() => fuelHeadroom(question)).toThrow(expect.objectContaining({ path: "air[1].speedRpm" }));
  });

  test("an engine that stands still", () => {
    expect(() => fuelSupply({ fuel: "petrol", speedRpm: 0, stages: [tank] })).toThrow(
      expect.objectContaining({ path: "speedRpm" }),
    );
  });
});

describe("for any fuel system", () => {
  const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const question = fc.record({
    fuel: fc.constantFrom(...fuels),
    speedRpm: positive(500, 9_000),
    displacement: positive(0.1, 5),
    window: positive(30, 400),
    flow: positive(50, 2_000),
  });

  test("the limit is no more than series allows, never not a number, and more hardware never lowers it", () => {
    fc.assert(
      fc.property(question, ({ fuel, speedRpm, displacement, window, flow }) => {
        const stages = (more: number): readonly FuelStage[] => [
          tank,
          { ...pump, displacementCm3PerCamRev: displacement * more },
          { ...direct, windowDeg: window * more },
          { ...port, staticFlowCm3PerMin: flow * more },
        ];
        const { stages: parts, limit } = fuelSupply({ fuel, speedRpm, stages: stages(1) });
        for (const { fuelKgPerH } of parts) expect(fuelKgPerH).toBeGreaterThanOrEqual(0);
        expect(limit.fuelKgPerH).toBeLessThanOrEqual(parts[0]?.fuelKgPerH ?? 0);
        expect(fuelSupply({ fuel, speedRpm, stages: stages(1.2) }).limit.fuelKgPerH).toBeGreaterThanOrEqual(
          limit.fuelKgPerH,
        );
      }),
    );
  });

  test("richer, or more air, burns more; the fuel burnt holds the mixture (conservation of mass)", () => {
    fc.assert(
      fc.property(fc.constantFrom(...fuels), positive(0.01, 2), positive(0.6, 1.5), (fuel, air, lambda) => {
        const burn = (airMassFlowKgPerS: number, mixture: number) =>
          fuelDemand({ fuel, airMassFlowKgPerS, lambda: mixture }).fuelKgPerH;
        expect(burn(air, lambda * 0.95)).toBeGreaterThan(burn(air, lambda));
        expect(burn(2 * air, lambda)).toBeCloseTo(2 * burn(air, lambda), 9);
      }),
    );
  });
});
