import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blower } from "../air/blower";
import { sampleBlower } from "../air/sample-blower";
import type { CorrectionQuestion } from "./correction-question";
import { dynoCorrection } from "./dyno-correction";
import { explainCorrectionWarning } from "./explain-correction-warning";

const reference: CorrectionQuestion = {
  standard: "SAE_J1349",
  ignition: "spark",
  aspiration: "natural",
  barometerKPa: 99,
  airTempC: 25,
  vapourPressureKPa: 0,
};

describe("at the reference air", () => {
  test.each([
    { ...reference, edition: "AUG2004" },
    { ...reference, edition: "JUN1990" },
    { ...reference, mechanicalEfficiency: 0.8 },
    { ...reference, standard: "UN_R85" },
    {
      ...reference,
      standard: "UN_R85",
      ignition: "compression",
      aspiration: "turbo",
      fuelMgPerLPerCycle: 70,
    },
    { ...reference, standard: "DIN_70020", barometerKPa: 101.3, airTempC: 20 },
    { ...reference, standard: "SAE_J607", barometerKPa: 29.92 * 3.386389, airTempC: 28 / 1.8 },
  ] as const satisfies readonly CorrectionQuestion[])("$standard leaves the power as it is", (question) => {
    expect(dynoCorrection(question).factor).toBeCloseTo(1, 12);
  });
});

describe("direction", () => {
  test("thinner, hotter or damper air raises every factor", () => {
    const standards = ["SAE_J1349", "UN_R85", "DIN_70020", "SAE_J607"] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...standards),
        fc.double({ min: 85, max: 104, noNaN: true }),
        fc.double({ min: 0, max: 45, noNaN: true }),
        (standard, barometerKPa, airTempC) => {
          const at = (change: Partial<CorrectionQuestion>) =>
            dynoCorrection({ ...reference, standard, barometerKPa, airTempC, ...change }).factor;
          expect(at({ barometerKPa: barometerKPa - 1 })).toBeGreaterThan(at({}));
          expect(at({ airTempC: airTempC + 1 })).toBeGreaterThan(at({}));
          const damp = at({ vapourPressureKPa: 1 });
          // DIN 70020 takes the total pressure, so vapour does not count.
          if (standard === "DIN_70020") expect(damp).toBe(at({}));
          else expect(damp).toBeGreaterThan(at({}));
        },
      ),
    );
  });
});

describe("validity, ends included", () => {
  test.each([
    [{ airTempC: 15 }, true],
    [{ airTempC: 14.9 }, false],
    [{ airTempC: 35, barometerKPa: 99 }, true],
    [{ airTempC: 35.1, barometerKPa: 99 }, false],
    [{ barometerKPa: 105, airTempC: 30 }, true],
    [{ barometerKPa: 105.1, airTempC: 30 }, false],
    [{ standard: "UN_R85", barometerKPa: 95 }, true],
    [{ standard: "UN_R85", barometerKPa: 92 }, false],
    [{ standard: "DIN_70020", barometerKPa: 85, airTempC: 45 }, true],
    [{ standard: "SAE_J1349", ignition: "compression" }, false],
    [{ standard: "DIN_70020", ignition: "compression" }, false],
    [
      { standard: "UN_R85", ignition: "compression", fuelMgPerLPerCycle: 50, airTempC: 40, barometerKPa: 98 },
      true,
    ],
    [
      {
        standard: "UN_R85",
        ignition: "compression",
        fuelMgPerLPerCycle: 50,
        airTempC: 40.1,
        barometerKPa: 98,
      },
      false,
    ],
  ] as const)("%j is valid: %s", (change, valid) => {
    const answer = dynoCorrection({ ...reference, ...change });
    expect(answer.valid).toBe(valid);
    if (!valid) expect(answer.warnings.length).toBeGreaterThan(0);
  });

  test("the aspiration of a spark engine changes warnings and nothing else", () => {
    const natural = dynoCorrection({ ...reference, barometerKPa: 95 });
    const blown = dynoCorrection({ ...reference, barometerKPa: 95, aspiration: "mechanical" });
    expect(blown).toEqual({ ...natural, warnings: ["boost-control-may-overcorrect"] });
    expect(blown.warnings.map(explainCorrectionWarning)).toHaveLength(1);
  });

  test("a barometer in hectopascals is called implausible", () => {
    expect(dynoCorrection({ ...reference, barometerKPa: 130 }).warnings).toContain("barometer-implausible");
  });
});

describe("an engine whose boost is held by its controller, in thinner air", () => {
  const [home, hill] = [100, 90];
  const factor = (barometerKPa: number) =>
    dynoCorrection({ ...reference, aspiration: "mechanical", barometerKPa }).factor;
  const settled = (pressureKPa: number, blowerPulleyMm: number) => {
    const { ambient, drive } = sampleBlower;
    const [point] = blower({
      ...sampleBlower,
      ambient: { ...ambient, pressureKPa },
      drive: { ...drive, blowerPulleyMm },
      speedsRpm: [6_000],
    }).points;
    if (!point) throw new Error("One speed gives one point.");
    return { air: point.airMassFlowKgPerS, manifoldKPa: point.boostKPa + pressureKPa };
  };
  const { blowerPulleyMm } = sampleBlower.drive;
  const { inletDropKPa = 0 } = sampleBlower;
  const atHome = settled(home, blowerPulleyMm);

  test("is credited with a tenth it never lost, where a fixed drive is credited with what it did lose", () => {
    const fixed = settled(hill, blowerPulleyMm);
    // What the controller does with a bypass, done with a pulley: the delivery of the air at home.
    const held = settled(hill, (blowerPulleyMm * (hill - inletDropKPa)) / (home - inletDropKPa));
    expect(held.manifoldKPa / atHome.manifoldKPa).toBeCloseTo(1, 1);
    expect(held.air).toBeCloseTo(atHome.air, 9);
    // Power goes with the air, so observed × factor over what home would have shown.
    const credited = ({ air }: { readonly air: number }) =>
      ((air / atHome.air) * factor(hill)) / factor(home) - 1;
    expect(credited(held)).toBeGreaterThan(0.1);
    expect(Math.abs(credited(fixed))).toBeLessThan(0.03);
  });

  test("is warned of, because the question does not say how boost is held", () => {
    const { warnings } = dynoCorrection({ ...reference, aspiration: "mechanical", barometerKPa: hill });
    expect(warnings).toContain("boost-control-may-overcorrect");
  });
});

describe("questions that do not go together", () => {
  test.each([
    [{ relativeHumidityPct: 40 }, "one-humidity"],
    [{ vapourPressureKPa: undefined }, "one-humidity"],
    [{ standard: "UN_R85", mechanicalEfficiency: 0.85 }, "efficiency-not-used"],
    [{ standard: "UN_R85", ignition: "compression" }, "fuel-missing"],
    [{ edition: "R85" }, "wrong-edition"],
    [{ standard: "DIN_70020", edition: "JUN1990" }, "wrong-edition"],
    [{ standard: "UN_R85", edition: "ISO1585" }, "wrong-edition"],
    [{ vapourPressureKPa: 99 }, "no-dry-pressure"],
    [{ vapourPressureKPa: undefined, relativeHumidityPct: 101 }, "out-of-range"],
    [{ barometerKPa: 1013 }, "out-of-range"],
    [{ airTempC: -100 }, "out-of-range"],
    [{ barometerKPa: Number.NaN }, "out-of-range"],
    [{ airTempC: Number.POSITIVE_INFINITY }, "out-of-range"],
    [{ vapourPressureKPa: -1 }, "out-of-range"],
    [{ mechanicalEfficiency: 1.01 }, "out-of-range"],
    [{ observedPowerKw: Number.NaN }, "out-of-range"],
  ] as const)("%j is refused as %s", (change, code) => {
    expect(() => dynoCorrection({ ...reference, ...change })).toThrow(expect.objectContaining({ code }));
  });
});

test("the corrected power is the observed power times the factor", () => {
  const { factor, correctedPowerKw } = dynoCorrection({
    ...reference,
    barometerKPa: 96,
    observedPowerKw: 300,
  });
  expect(correctedPowerKw).toBe(300 * factor);
  expect(dynoCorrection(reference).correctedPowerKw).toBeNull();
});
