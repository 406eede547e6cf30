import { type BlowerPoint, type BlowerQuestion, blower } from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { engineeringVectors } from "./expect-vector";
import { unusedVectors } from "./reference-vectors";

// The source and the standing of every value are in shared/reference/blower.json.
const vector = engineeringVectors("blower.json");
type Given = ReturnType<typeof vector>["given"];

const KELVIN_AT_0_C = 273.15;
const KPA_PER_BAR = 100;

/** A centrifugal blower at its design speed: the pressure ratio is what the example gives. */
const atDesign: BlowerQuestion = {
  engine: { displacementL: 3, volumetricEfficiency: 1, maxSpeedRpm: 8_000 },
  blower: {
    kind: "centrifugal",
    designSpeedRpm: 40_000,
    designPressureRatio: 1.6,
    adiabaticEfficiency: 1,
    maxSpeedRpm: 50_000,
  },
  drive: { crankPulleyMm: 100, blowerPulleyMm: 100, internalRatio: 10 },
  ambient: { pressureKPa: 101.3, tempC: 25 },
  chargeCooler: null,
  inletDropKPa: 0,
  speedsRpm: [4_000],
};

/** Too gentle to compress: ratio 1. */
const centrifugalAtRest = {
  ...atDesign.blower,
  kind: "centrifugal",
  designSpeedRpm: 40_000,
  designPressureRatio: 1,
} as const;

function only(question: BlowerQuestion): BlowerPoint {
  const [point] = blower(question).points;
  if (!point) throw new Error("One speed gives one point.");
  return point;
}

function compressed(
  given: Given,
  change: {
    readonly efficiency?: number;
    readonly speedShare?: number;
    readonly cooler?: BlowerQuestion["chargeCooler"];
  },
) {
  const speedShare = change.speedShare ?? 1;
  return only({
    ...atDesign,
    blower: {
      kind: "centrifugal",
      designSpeedRpm: 40_000 / speedShare,
      designPressureRatio: given("PR"),
      adiabaticEfficiency: change.efficiency ?? 1,
      maxSpeedRpm: 60_000,
    },
    ambient: { pressureKPa: 100, tempC: given("T1") - KELVIN_AT_0_C },
    chargeCooler: change.cooler,
  });
}

describe("air", () => {
  test("air-density-gtr15: the reference density of UN GTR 15", () => {
    const { given, expects } = vector("air-density-gtr15");
    const point = only({
      ...atDesign,
      engine: { displacementL: 1.2, volumetricEfficiency: 1, maxSpeedRpm: 7_000 },
      blower: { ...centrifugalAtRest },
      ambient: { pressureKPa: given("p"), tempC: given("T") - KELVIN_AT_0_C },
    });
    // 1.2 L of a four-stroke at 4,000 rpm is 40 L/s.
    expects("rho", point.airMassFlowKgPerS / 0.04);
  });

  test("density and the air a four-stroke draws, with the bypass open (ideal gas; volumetric efficiency)", () => {
    const density = vector("air-density-dry");
    const flow = vector("airflow-4stroke");
    const point = only({
      ...atDesign,
      engine: {
        displacementL: flow.given("V_d"),
        volumetricEfficiency: flow.given("eta_v"),
        maxSpeedRpm: 7_000,
      },
      blower: {
        kind: "displacement",
        displacementLPerRev: 0.1,
        volumetricEfficiency: 1,
        adiabaticEfficiency: 1,
        maxSpeedRpm: 100_000,
      },
      ambient: { pressureKPa: density.given("p"), tempC: density.given("T") - KELVIN_AT_0_C },
      drive: { ...atDesign.drive, internalRatio: 1 },
      speedsRpm: [flow.given("n")],
    });
    expect(point.bypass).toBe(true);
    flow.expects("mdot", point.airMassFlowKgPerS);
    flow.expects("mdot_h", point.airMassFlowKgPerS * 3_600);
    density.expects(
      "rho",
      point.airMassFlowKgPerS / ((flow.given("eta_v") * flow.given("V_d") * flow.given("n")) / 120_000),
    );
  });
});

describe("compression and cooling", () => {
  test("isentropic (textbook)", () => {
    const { given, expects } = vector("t2-isentropic");
    expects("T2", compressed(given, {}).dischargeTempC + KELVIN_AT_0_C);
  });

  test("with an adiabatic efficiency (textbook)", () => {
    const { given, expects } = vector("t2-eta60");
    expects("T2", compressed(given, { efficiency: given("eta_ad") }).dischargeTempC + KELVIN_AT_0_C);
  });

  test("with a polytropic efficiency, as the adiabatic one it amounts to (textbook)", () => {
    const { given, expects, expected } = vector("t2-polytropic70");
    const exponent = 0.4 / 1.4;
    const efficiency = (given("PR") ** exponent - 1) / (given("PR") ** (exponent / given("eta_p")) - 1);
    expects("eta_ad", efficiency);
    expects("T2", compressed(given, { efficiency: expected("eta_ad") }).dischargeTempC + KELVIN_AT_0_C);
  });

  test.each(["roots-eff-1.2", "roots-eff-1.6", "roots-eff-2.0"])(
    "%s: at the efficiency of pushing out without compressing, the work is volume times pressure rise",
    (id) => {
      const { given, expected } = vector(id);
      const named: Given = (name) => (name === "PR" ? given("r") : 298.15);
      const point = compressed(named, { efficiency: expected("eta") });
      const inletVolumeM3PerS = (point.airMassFlowKgPerS * 0.287055 * 298.15) / 100;
      const rectangleKw = inletVolumeM3PerS * 100 * (given("r") - 1);
      // cp 1.005 against γ/(γ − 1)·R = 1.00469: the two differ by 0.03 %.
      expect(point.drivePowerKw / rectangleKw).toBeCloseTo(1, 3);
    },
  );

  test("after a charge cooler (definition of effectiveness)", () => {
    const { given, expects } = vector("cooler-density-ratio");
    const cooler = {
      effectiveness: given("eps"),
      coolantTempC: given("T_c") - KELVIN_AT_0_C,
      pressureDropKPa: 0,
    };
    const ratio = (point: BlowerPoint) =>
      (point.pressureRatio * given("T1")) / (point.manifoldTempC + KELVIN_AT_0_C);
    const cooled = compressed(given, { efficiency: given("eta_ad"), cooler });
    expects("T_m", cooled.manifoldTempC + KELVIN_AT_0_C);
    expects("density_ratio", ratio(cooled));
    expects("density_ratio_no_cooler", ratio(compressed(given, { efficiency: given("eta_ad") })));
  });

  test.each(["centrifugal-affinity-0.9", "centrifugal-affinity-1.1"])("%s (affinity law)", (id) => {
    const { given, expects } = vector(id);
    const pressureRatio = given("PR1");
    const named: Given = (name) => (name === "PR" ? pressureRatio : 298.15);
    expects("PR2", compressed(named, { speedShare: given("N2_over_N1") }).pressureRatio);
  });
});

describe("mass balance of a displacement blower (derivation)", () => {
  test.each(["blower-balance-nocooler", "blower-balance-cooler"])("%s", (id) => {
    const { given, expects, expected } = vector(id);
    const cooled = id.endsWith("-cooler");
    const point = only({
      engine: {
        displacementL: given("V_d"),
        volumetricEfficiency: given("eta_v_engine"),
        maxSpeedRpm: 7_000,
      },
      blower: {
        kind: "displacement",
        displacementLPerRev: given("D_blower"),
        volumetricEfficiency: given("eta_v_blower"),
        adiabaticEfficiency: given("eta_ad"),
        maxSpeedRpm: 14_000,
      },
      drive: {
        crankPulleyMm: 100 * given("pulley_ratio"),
        blowerPulleyMm: 100,
        internalRatio: 1,
        efficiency: given("eta_mech_drive"),
      },
      ambient: { pressureKPa: given("p1"), tempC: given("T1") - KELVIN_AT_0_C },
      chargeCooler: cooled
        ? {
            effectiveness: given("eps_cooler"),
            coolantTempC: given("T_coolant") - KELVIN_AT_0_C,
            pressureDropKPa: given("dp_cooler"),
          }
        : null,
      inletDropKPa: 0,
      speedsRpm: [given("n")],
    });
    expects("PR", point.pressureRatio);
    expects("T2", point.dischargeTempC + KELVIN_AT_0_C);
    expects("p_m", point.boostKPa + given("p1"));
    expects("P_drive", point.drivePowerKw);
    if (cooled) {
      expects("T_m", point.manifoldTempC + KELVIN_AT_0_C);
      return;
    }
    expects("n_b", point.blowerSpeedRpm);
    expects("mdot", point.airMassFlowKgPerS);
    expects("boost", point.boostKPa);
    expect(point.pressureRatio * (298.15 / (point.dischargeTempC + KELVIN_AT_0_C))).toBeCloseTo(
      expected("density_ratio"),
      5,
    );
  });
});

describe("a displacement blower whose clearances leak (orifice law, derivation)", () => {
  test.each(["blower-leakage-3250", "blower-leakage-6500"])("%s", (id) => {
    const { given, expects } = vector(id);
    const point = only({
      engine: {
        displacementL: given("V_d"),
        volumetricEfficiency: given("eta_v_engine"),
        maxSpeedRpm: 7_000,
      },
      blower: {
        kind: "displacement",
        displacementLPerRev: given("D_blower"),
        volumetricEfficiency: given("eta_v_blower"),
        leakageAreaMm2: given("A_leak"),
        adiabaticEfficiency: given("eta_ad"),
        maxSpeedRpm: 14_000,
      },
      drive: {
        crankPulleyMm: 100 * given("pulley_ratio"),
        blowerPulleyMm: 100,
        internalRatio: 1,
        efficiency: given("eta_mech_drive"),
      },
      ambient: { pressureKPa: given("p1"), tempC: given("T1") - KELVIN_AT_0_C },
      chargeCooler: {
        effectiveness: given("eps_cooler"),
        coolantTempC: given("T_coolant") - KELVIN_AT_0_C,
        pressureDropKPa: given("dp_cooler"),
      },
      inletDropKPa: 0,
      speedsRpm: [given("n")],
    });
    expects("PR", point.pressureRatio);
    expects("mdot", point.airMassFlowKgPerS);
    expects("leak_pct", point.leakagePct ?? Number.NaN);
    expects("T2", point.dischargeTempC + KELVIN_AT_0_C);
    expects("T_m", point.manifoldTempC + KELVIN_AT_0_C);
    expects("boost", point.boostKPa);
    expects("P_drive", point.drivePowerKw);
  });
});

describe("textbook examples of supercharged engines", () => {
  test("R. K. Rajput, A Textbook of Internal Combustion Engines, Ex. 16.1: power of the blower", () => {
    const { given, expects } = vector("textbook-rajput-16.1");
    const naturalAir = (given("BSFC") * given("P_NA") * given("AFR")) / 3_600;
    const point = compressed(given, { efficiency: given("eta_ad") });
    const discharge = point.dischargeTempC + KELVIN_AT_0_C;
    // The air of the book's engine over the air of ours; drive power goes with the air.
    const air = (naturalAir * given("PR") * given("T1")) / discharge;
    expects("P_drive", ((point.drivePowerKw / given("eta_m")) * air) / point.airMassFlowKgPerS);
  });

  // The books take the air as what fills the swept volume at the blower's outlet, and R as 0.287.
  test.each([
    ["textbook-sc-17.1-unrounded", "net_dBP", 0.002],
    ["textbook-sc-17.1", "net_dBP", 0.02],
    ["textbook-sc-15.1", "net_dBP", 0.002],
    ["textbook-sc-3.3L", "net_dBP", 0.002],
  ] as const)("%s: gain of brake power, within %s %d", (id, name, within) => {
    const { given, expected } = vector(id);
    const point = only({
      ...atDesign,
      engine: { displacementL: given("V_s"), volumetricEfficiency: 1, maxSpeedRpm: 4_000 },
      blower: {
        kind: "centrifugal",
        designSpeedRpm: given("n") * 10,
        designPressureRatio: given("PR"),
        adiabaticEfficiency: given("eta_ad"),
        maxSpeedRpm: 100_000,
      },
      ambient: { pressureKPa: given("p1") * KPA_PER_BAR, tempC: given("T1") - KELVIN_AT_0_C },
      drive: { ...atDesign.drive, efficiency: given("eta_m") },
      speedsRpm: [given("n")],
    });
    const swept = (given("V_s") * given("n")) / 2_000;
    const equivalent = (swept * point.pressureRatio * given("T1")) / (point.dischargeTempC + KELVIN_AT_0_C);
    const combustion = given("ip") * (equivalent - given("eta_v") * swept);
    const gasExchange = (point.boostKPa * swept) / 60;
    const gain = given("eta_m") * (combustion + gasExchange) - point.drivePowerKw;
    expect(Math.abs(gain / expected(name) - 1)).toBeLessThan(within);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("blower.json")).toEqual([]);
});
