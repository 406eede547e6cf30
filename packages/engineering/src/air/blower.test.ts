import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blower } from "./blower";
import type { BlowerPoint, BlowerQuestion, CentrifugalBlower } from "./blower-question";
import { airDensity, engineAirFlow, KELVIN_AT_0_C } from "./dry-air";
import { leakyDisplacement, sampleBlower, sampleDisplacement } from "./sample-blower";

const centrifugal: CentrifugalBlower = {
  kind: "centrifugal",
  designSpeedRpm: 40_000,
  designPressureRatio: 1.6,
  adiabaticEfficiency: 0.72,
  maxSpeedRpm: 50_000,
};
const centrifugalBuild: BlowerQuestion = {
  ...sampleBlower,
  blower: centrifugal,
  drive: { crankPulleyMm: 175, blowerPulleyMm: 92, internalRatio: 3.5 },
};

function at(question: BlowerQuestion, speedRpm: number): BlowerPoint {
  const [point] = blower({ ...question, speedsRpm: [speedRpm] }).points;
  if (!point) throw new Error("One speed gives one point.");
  return point;
}

describe("the demo build (common practice, no published source)", () => {
  test.each([
    ["2.4 L on a 92 mm pulley", 2.4, 92, 64, 0.476, 62, 40],
    ["1.9 L on an 88 mm pulley", 1.9, 88, 4.6 * 6.894757, 118 * 0.0032667, null, null],
    ["1.9 L on an 80 mm pulley", 1.9, 80, 6.8 * 6.894757, 131 * 0.0032667, null, null],
  ])("%s", (_, displacementLPerRev, blowerPulleyMm, boostKPa, air, chargeC, driveKw) => {
    const point = at(
      {
        ...sampleBlower,
        blower: { ...sampleDisplacement, displacementLPerRev },
        drive: { ...sampleBlower.drive, blowerPulleyMm },
      },
      6_000,
    );
    // The trade's figures are rounded, and it took its drive power after a belt; the smaller ones' air is fuel at 0.80.
    expect(Math.abs(point.boostKPa - boostKPa)).toBeLessThan(0.6);
    expect(Math.abs(point.airMassFlowKgPerS / air - 1)).toBeLessThan(0.025);
    if (chargeC !== null) expect(Math.abs(point.manifoldTempC - chargeC)).toBeLessThan(0.6);
    if (driveKw !== null) expect(Math.abs(point.drivePowerKw - driveKw)).toBeLessThan(2);
  });
});

describe("what a good engineer would look for", () => {
  test("a better charge cooler lowers the gauge at the same air, and saves drive power", () => {
    const worse = at(
      { ...sampleBlower, chargeCooler: { effectiveness: 0.5, coolantTempC: 45, pressureDropKPa: 5 } },
      6_000,
    );
    const better = at(
      { ...sampleBlower, chargeCooler: { effectiveness: 0.85, coolantTempC: 45, pressureDropKPa: 5 } },
      6_000,
    );
    expect(better.airMassFlowKgPerS).toBe(worse.airMassFlowKgPerS);
    expect(better.boostKPa).toBeLessThan(worse.boostKPa - 5);
    expect(better.drivePowerKw).toBeLessThan(worse.drivePowerKw - 1);
    expect(better.manifoldTempC).toBeLessThan(worse.manifoldTempC);
  });

  test("with a displacement blower the engine's efficiency moves the gauge and not the air", () => {
    const tight = at(
      { ...sampleBlower, engine: { ...sampleBlower.engine, volumetricEfficiency: 0.9 } },
      6_000,
    );
    const free = at(sampleBlower, 6_000);
    expect(tight.airMassFlowKgPerS).toBe(free.airMassFlowKgPerS);
    expect(tight.boostKPa).toBeGreaterThan(free.boostKPa);
  });

  test("a displacement blower's boost is near flat; a centrifugal one's rises with speed", () => {
    const rise = (question: BlowerQuestion) => at(question, 6_000).boostKPa / at(question, 3_000).boostKPa;
    expect(rise(sampleBlower)).toBeCloseTo(1, 6);
    expect(rise(centrifugalBuild)).toBeGreaterThan(3);
  });

  test("leakage that grows at low speed bends the displacement line a little", () => {
    const leaky = {
      ...sampleBlower,
      blower: {
        ...sampleDisplacement,
        volumetricEfficiency: [
          { speedRpm: 3_000, value: 0.88 },
          { speedRpm: 6_000, value: 0.92 },
        ],
      },
    };
    const share = at(leaky, 3_000).boostKPa / at(leaky, 6_000).boostKPa;
    expect(share).toBeGreaterThan(0.8);
    expect(share).toBeLessThan(0.95);
  });

  describe("clearances of 100 mm² that leak", () => {
    const leaky = (area: number, change: Partial<BlowerQuestion> = {}) => ({
      ...sampleBlower,
      ...change,
      blower: { ...leakyDisplacement, leakageAreaMm2: area },
    });
    const cooled = (effectiveness: number) => ({
      chargeCooler: { effectiveness, coolantTempC: 45, pressureDropKPa: 5 },
    });
    const share = (point: BlowerPoint) => point.leakagePct ?? Number.NaN;

    test("the share that leaks falls with speed and grows with the pressure ratio", () => {
      const [slow, fast] = [at(leaky(100), 2_000), at(leaky(100), 6_000)];
      expect(share(slow)).toBeGreaterThan(2 * share(fast));
      expect(slow.boostKPa).toBeLessThan(fast.boostKPa);
      const tight = { engine: { ...sampleBlower.engine, volumetricEfficiency: 0.85 } };
      const packed = at(leaky(100, tight), 6_000);
      expect(packed.pressureRatio).toBeGreaterThan(fast.pressureRatio);
      expect(share(packed)).toBeGreaterThan(share(fast));
    });

    test("what is left is 0.80 to 0.95 of the swept volume where blowers are used (from memory)", () => {
      for (const speed of [3_000, 4_500, 6_000]) {
        const left = 98 - share(at(leaky(100), speed));
        expect(left).toBeGreaterThan(80);
        expect(left).toBeLessThan(95);
      }
    });

    test("a better cooler lowers the gauge and with it the leakage, so a little more air arrives", () => {
      const [worse, better] = [at(leaky(100, cooled(0.5)), 6_000), at(leaky(100, cooled(0.85)), 6_000)];
      expect(better.boostKPa).toBeLessThan(worse.boostKPa - 5);
      expect(better.airMassFlowKgPerS / worse.airMassFlowKgPerS).toBeGreaterThan(1);
      expect(better.airMassFlowKgPerS / worse.airMassFlowKgPerS).toBeLessThan(1.02);
      expect(better.drivePowerKw).toBeLessThan(worse.drivePowerKw - 1);
    });

    test("no area is no leakage, and a centrifugal blower has none to tell", () => {
      const { blower: plain } = leaky(0);
      const { leakageAreaMm2: _, ...without } = plain;
      expect(at({ ...sampleBlower, blower: without }, 4_000)).toEqual(at(leaky(0), 4_000));
      expect(at(leaky(0), 4_000).leakagePct).toBe(0);
      expect(at(centrifugalBuild, 4_000).leakagePct).toBeNull();
    });
  });

  test("too slow a drive opens the bypass: ratio 1, no drive power, and the engine still breathes", () => {
    const slow = at({ ...sampleBlower, drive: { ...sampleBlower.drive, blowerPulleyMm: 220 } }, 3_000);
    expect(slow).toMatchObject({ bypass: true, pressureRatio: 1, drivePowerKw: 0 });
    // Inlet and cooler take 8 kPa between them.
    expect(slow.boostKPa).toBeCloseTo(-8, 9);
    expect(slow.airMassFlowKgPerS).toBeGreaterThan(0);
  });

  test("turning the blower too fast is an answer with a flag", () => {
    const fast = at({ ...sampleBlower, drive: { ...sampleBlower.drive, blowerPulleyMm: 70 } }, 6_000);
    expect(fast.overspeed).toBe(true);
    expect(fast.boostKPa).toBeGreaterThan(at(sampleBlower, 6_000).boostKPa);
    expect(at(sampleBlower, 6_000).overspeed).toBe(false);
  });
});

test("the belt's speed is that of the crank pulley's rim, judged where its maker's limit is known", () => {
  const build = (maxBeltSpeedMPerS?: number) => ({
    ...sampleBlower,
    drive: { ...sampleBlower.drive, maxBeltSpeedMPerS },
  });
  // 0.175 m × π × 100 turns a second.
  expect(at(build(), 6_000).beltSpeedMPerS).toBeCloseTo(54.978, 3);
  expect(at(build(), 6_000).beltOverspeed).toBe(false);
  expect(at(build(50), 6_000).beltOverspeed).toBe(true);
});

describe("questions that cannot be meant", () => {
  const { engine, drive, ambient } = sampleBlower;
  const nan = Number.NaN;
  test.each<readonly [Partial<BlowerQuestion>, string, string]>([
    [{ engine: { ...engine, displacementL: 0 } }, "out-of-range", "engine.displacementL"],
    [{ engine: { ...engine, displacementL: -5.7 } }, "out-of-range", "engine.displacementL"],
    [{ engine: { ...engine, volumetricEfficiency: 1.2 } }, "out-of-range", "engine.volumetricEfficiency"],
    [{ drive: { ...drive, crankPulleyMm: 0 } }, "out-of-range", "drive.crankPulleyMm"],
    [{ drive: { ...drive, blowerPulleyMm: -92 } }, "out-of-range", "drive.blowerPulleyMm"],
    [{ drive: { ...drive, efficiency: 1.01 } }, "out-of-range", "drive.efficiency"],
    [{ ambient: { ...ambient, pressureKPa: 0 } }, "out-of-range", "ambient.pressureKPa"],
    [{ ambient: { ...ambient, tempC: nan } }, "out-of-range", "ambient.tempC"],
    [{ inletDropKPa: -1 }, "out-of-range", "inletDropKPa"],
    [
      { blower: { ...sampleDisplacement, adiabaticEfficiency: 1.5 } },
      "out-of-range",
      "blower.adiabaticEfficiency",
    ],
    [
      { blower: { ...sampleDisplacement, volumetricEfficiency: 0 } },
      "out-of-range",
      "blower.volumetricEfficiency",
    ],
    [
      { blower: { ...sampleDisplacement, displacementLPerRev: 0 } },
      "out-of-range",
      "blower.displacementLPerRev",
    ],
    [{ blower: { ...sampleDisplacement, leakageAreaMm2: -1 } }, "out-of-range", "blower.leakageAreaMm2"],
    [{ blower: { ...sampleDisplacement, leakageAreaMm2: nan } }, "out-of-range", "blower.leakageAreaMm2"],
    [{ blower: { ...centrifugal, designPressureRatio: 0.9 } }, "out-of-range", "blower.designPressureRatio"],
    [{ ambient: { ...ambient, pressureKPa: 30 }, inletDropKPa: 25 }, "no-pressure-left", "inletDropKPa"],
    [{ speedsRpm: [3_000, 6_501] }, "above-engine-speed", "speedsRpm[1]"],
    [{ speedsRpm: [0] }, "out-of-range", "speedsRpm[0]"],
    [{ speedsRpm: [Number.POSITIVE_INFINITY] }, "out-of-range", "speedsRpm[0]"],
  ])("%j is refused as %s at %s", (change, code, path) => {
    expect(() => blower({ ...sampleBlower, ...change })).toThrow(expect.objectContaining({ code, path }));
  });

  test("no balance says so, with the bracket", () => {
    const absurd = {
      ...sampleBlower,
      blower: { ...sampleDisplacement, displacementLPerRev: 50 },
      chargeCooler: null,
    };
    expect(() => at({ ...absurd, drive: { ...drive, internalRatio: 8 } }, 6_000)).toThrow(
      expect.objectContaining({
        code: "no-convergence",
        message: expect.stringContaining("between 1 and 100"),
      }),
    );
  });
});

describe("for any build", () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const parts = fc.record({
    displacementL: between(1, 8),
    engineEfficiency: between(0.7, 1.05),
    /** Of the blower per turn, over the engine's. */
    share: between(0.1, 0.45),
    filling: between(0.6, 1),
    leakageAreaMm2: fc.option(between(0, 250), { nil: undefined }),
    adiabaticEfficiency: between(0.4, 0.9),
    designSpeedRpm: between(20_000, 60_000),
    designPressureRatio: between(1, 2.5),
    crankPulleyMm: between(120, 220),
    blowerPulleyMm: between(60, 160),
    driveEfficiency: between(0.8, 1),
    pressureKPa: between(70, 105),
    tempC: between(-10, 50),
    chargeCooler: fc.option(
      fc.record({
        effectiveness: between(0, 1),
        coolantTempC: between(10, 70),
        pressureDropKPa: between(0, 12),
      }),
    ),
    inletDropKPa: between(0, 6),
    speedsRpm: fc.array(between(500, 8_000), { minLength: 1, maxLength: 6 }),
    isCentrifugal: fc.boolean(),
  });
  const builds: fc.Arbitrary<BlowerQuestion> = parts.map((part) => ({
    engine: {
      displacementL: part.displacementL,
      volumetricEfficiency: part.engineEfficiency,
      maxSpeedRpm: 9_000,
    },
    blower: part.isCentrifugal
      ? {
          ...centrifugal,
          designSpeedRpm: part.designSpeedRpm,
          designPressureRatio: part.designPressureRatio,
          adiabaticEfficiency: part.adiabaticEfficiency,
        }
      : {
          ...sampleDisplacement,
          displacementLPerRev: part.displacementL * part.share,
          volumetricEfficiency: part.filling,
          leakageAreaMm2: part.leakageAreaMm2,
          adiabaticEfficiency: part.adiabaticEfficiency,
        },
    drive: {
      crankPulleyMm: part.crankPulleyMm,
      blowerPulleyMm: part.blowerPulleyMm,
      internalRatio: part.isCentrifugal ? 3 : 1,
      efficiency: part.driveEfficiency,
    },
    ambient: { pressureKPa: part.pressureKPa, tempC: part.tempC },
    chargeCooler: part.chargeCooler,
    inletDropKPa: part.inletDropKPa,
    speedsRpm: part.speedsRpm,
  }));

  test("every figure is a number, mass and energy are conserved, and bypass and boost agree", () => {
    fc.assert(
      fc.property(builds, (question) => {
        const { engine, ambient, drive, chargeCooler } = question;
        for (const point of blower(question).points) {
          for (const figure of Object.values(point)) {
            if (typeof figure === "number") expect(Number.isFinite(figure)).toBe(true);
          }
          // The engine takes from the manifold exactly what is said to flow.
          const density = airDensity(
            ambient.pressureKPa + point.boostKPa,
            point.manifoldTempC + KELVIN_AT_0_C,
          );
          const taken = engineAirFlow(
            engine.displacementL,
            point.speedRpm,
            Number(engine.volumetricEfficiency),
            density,
          );
          expect(Math.abs(taken / point.airMassFlowKgPerS - 1)).toBeLessThan(1e-9);
          // The shaft's power arrives in the air as heat, less what the drive keeps.
          const heat = point.airMassFlowKgPerS * 1.005 * (point.dischargeTempC - ambient.tempC);
          expect(point.drivePowerKw * Number(drive.efficiency)).toBeCloseTo(heat, 9);
          expect(point.pressureRatio).toBeGreaterThanOrEqual(1);
          if (point.bypass) expect(point).toMatchObject({ pressureRatio: 1, drivePowerKw: 0 });
          const outlet = point.pressureRatio * (ambient.pressureKPa - (question.inletDropKPa ?? 0));
          expect(outlet - (chargeCooler?.pressureDropKPa ?? 0) - ambient.pressureKPa).toBeCloseTo(
            point.boostKPa,
            9,
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  test("a smaller blower pulley never gives less air, boost or drive power", () => {
    fc.assert(
      fc.property(builds, between(0.85, 0.99), (question, share) => {
        const smaller = { ...question.drive, blowerPulleyMm: question.drive.blowerPulleyMm * share };
        const { points } = blower(question);
        blower({ ...question, drive: smaller }).points.forEach((faster, index) => {
          const before = points[index];
          if (!before) throw new Error("The same speeds give the same points.");
          expect(faster.boostKPa).toBeGreaterThanOrEqual(before.boostKPa - 1e-9);
          expect(faster.drivePowerKw).toBeGreaterThanOrEqual(before.drivePowerKw - 1e-9);
          // A displacement blower's air follows its speed; a centrifugal one's also depends on how it heats it.
          if (question.blower.kind === "displacement") {
            expect(faster.airMassFlowKgPerS).toBeGreaterThanOrEqual(before.airMassFlowKgPerS - 1e-12);
          }
        });
      }),
    );
  });
});
