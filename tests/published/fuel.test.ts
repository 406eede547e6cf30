import { type Fuel, type FuelStage, fuelDemand, fuelProperties, fuelSupply } from "@buildproof/engineering";
import { unitConvert } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { engineeringVectors } from "./expect-vector";
import { unusedVectors } from "./reference-vectors";

// The source and the standing of every value are in shared/reference/fuel.json.
const vector = engineeringVectors("fuel.json");
const KPA_PER_BAR = 100;

function supplied(stage: FuelStage, speedRpm = 6_000, fuel: Fuel = "petrol"): number {
  return fuelSupply({ fuel, speedRpm, stages: [stage] }).limit.fuelKgPerH;
}

const port: FuelStage = {
  kind: "port-injectors",
  count: 1,
  staticFlowCm3PerMin: 550,
  ratedPressureKPa: 300,
  railKPa: 300,
  manifoldKPa: 0,
  dutyLimit: 1,
};

const direct: FuelStage = {
  kind: "direct-injectors",
  count: 1,
  staticFlowGPerS: 15,
  ratedPressureKPa: 10_000,
  railKPa: 10_000,
  cylinderKPa: 0,
  windowDeg: 240,
  deadTimeMs: 0.3,
};

/** cm³/min of petrol in a flow of kg/h. */
function cm3PerMin(fuelKgPerH: number): number {
  return (fuelKgPerH / fuelProperties.petrol.densityKgPerL) * (1_000 / 60);
}

describe("demand", () => {
  test("from power and specific consumption (definition)", () => {
    const { given, expects } = vector("fuel-flow");
    const demand = fuelDemand({ fuel: "petrol", brakePowerKw: given("P"), bsfcGPerKwh: given("BSFC") });
    expects("mdot", demand.fuelKgPerH);
    expects("vol", demand.fuelLPerH);
  });

  test.each(["bte-from-bsfc", "bte-250"])("%s: the heat of the fuel bought and the work it did", (id) => {
    const { given, expects } = vector(id);
    const { fuelKgPerH } = fuelDemand({ fuel: "petrol", brakePowerKw: 1, bsfcGPerKwh: given("BSFC") });
    expects("eta", 3.6 / (fuelKgPerH * given("LHV")));
  });

  test("E85 needs 1.43 times the volume of petrol for the same air and lambda (AFDC properties)", () => {
    const same = { airMassFlowKgPerS: 0.3, lambda: 0.85 };
    const ratio =
      fuelDemand({ fuel: "E85", ...same }).fuelLPerH / fuelDemand({ fuel: "petrol", ...same }).fuelLPerH;
    // The contract rounds the blend's air ratio to three decimals.
    expect(ratio).toBeCloseTo(vector("blend-E85").expected("vol_flow_multiplier_vs_gasoline"), 4);
  });
});

describe("properties", () => {
  test.each(["E10", "E85"] as const)("%s by mass balance from AFDC components", (fuel) => {
    const { expected } = vector(`blend-${fuel}`);
    const { stoichiometricAirFuelRatio, densityKgPerL, heatMJPerKg } = fuelProperties[fuel];
    expect(stoichiometricAirFuelRatio).toBeCloseTo(expected("AFR_st"), 3);
    expect(densityKgPerL).toBeCloseTo(expected("rho"), 6);
    expect(heatMJPerKg).toBeCloseTo(expected("LHV"), 3);
  });

  test("heat of petrol and diesel as AFDC prints it in Btu/lb", () => {
    expect(fuelProperties.petrol.heatMJPerKg).toBeCloseTo(vector("lhv-gasoline").expected("LHV"), 3);
    expect(fuelProperties.diesel.heatMJPerKg).toBeCloseTo(vector("lhv-diesel2").expected("LHV"), 3);
  });

  test("heat of the ethanol in E85, as AFDC prints it in Btu/lb", () => {
    const share = vector("blend-E85").expected("w_ethanol");
    const ofPetrol = (1 - share) * fuelProperties.petrol.heatMJPerKg;
    // The blend was reckoned with 26.95.
    expect((fuelProperties.E85.heatMJPerKg - ofPetrol) / share).toBeCloseTo(
      vector("lhv-ethanol").expected("LHV"),
      2,
    );
  });

  test("air ratio of diesel from the composition CH1.8, by the form that gives ethanol its published 9.0", () => {
    const airRatio = (y: number, z: number) => (34.56 * (4 + y - 2 * z)) / (12.011 + 1.008 * y + 15.999 * z);
    const ethanol = vector("stoich-ethanol");
    ethanol.expects("AFR", airRatio(ethanol.given("y"), ethanol.given("z")));
    const petrol = vector("stoich-gasoline-CH1.87");
    petrol.expects("AFR", airRatio(petrol.given("y"), petrol.given("z")));
    expect(fuelProperties.diesel.stoichiometricAirFuelRatio).toBeCloseTo(airRatio(1.8, 0), 2);
  });
});

describe("injectors", () => {
  test("size of port injectors that pass exactly the demand", () => {
    const { given, expected } = vector("pfi-size");
    const demand = fuelDemand({ fuel: "petrol", brakePowerKw: given("P"), bsfcGPerKwh: given("BSFC") });
    const supply = supplied({
      ...port,
      count: given("N_inj"),
      staticFlowCm3PerMin: expected("Q"),
      dutyLimit: given("DC"),
    });
    expect(supply).toBeCloseTo(demand.fuelKgPerH, 5);
  });

  test("the same in pounds, hours and horsepower", () => {
    const { given, expected } = vector("pfi-size-imperial");
    const demandLbPerH = given("P") * given("BSFC");
    const supply = supplied({
      ...port,
      count: given("N_inj"),
      staticFlowCm3PerMin: expected("Q_ccm"),
      dutyLimit: given("DC"),
    });
    expect(unitConvert(supply, "kg", "lb")).toBeCloseTo(demandLbPerH, 4);
  });

  test("flow goes with the square root of the pressure drop (orifice law)", () => {
    const { given, expects } = vector("inj-sqrt");
    const at = { staticFlowCm3PerMin: given("Q1"), ratedPressureKPa: given("dp1") * KPA_PER_BAR };
    expects("Q2", cm3PerMin(supplied({ ...port, ...at, railKPa: given("dp2") * KPA_PER_BAR })));
  });

  test("boost works against a rail that does not follow it", () => {
    const { given, expects } = vector("inj-sqrt-boost");
    const stage = {
      ...port,
      staticFlowCm3PerMin: given("Q1"),
      ratedPressureKPa: given("dp1") * KPA_PER_BAR,
      railKPa: given("p_rail") * KPA_PER_BAR,
      manifoldKPa: given("boost") * KPA_PER_BAR,
    };
    expects("Q2", cm3PerMin(supplied(stage)));
  });

  test("a pulse of 12 ms at 7,000 is a duty of 0.7 (timing identity)", () => {
    const { given, expects } = vector("inj-duty");
    const { stages } = fuelSupply({
      fuel: "petrol",
      speedRpm: given("n"),
      stages: [{ ...direct, windowDeg: (given("PW") / 1_000) * 6 * given("n"), deadTimeMs: 0 }],
    });
    expects("DC", (stages[0]?.windowPct ?? Number.NaN) / 100);
  });

  test("direct injection: the window at speed, dead time taken off", () => {
    const { given, expected } = vector("di-window");
    const stage: FuelStage = {
      ...direct,
      count: given("N"),
      staticFlowGPerS: expected("static_flow_needed"),
      windowDeg: given("dtheta"),
      deadTimeMs: given("t_dead"),
    };
    expect(supplied(stage, given("n"))).toBeCloseTo(given("mdot"), 3);
  });

  test("direct injection: flow at rail pressure less cylinder pressure", () => {
    const { given, expects } = vector("di-rail-scaling");
    const stage: FuelStage = {
      ...direct,
      staticFlowGPerS: given("Q1"),
      ratedPressureKPa: given("dp1") * KPA_PER_BAR,
      railKPa: given("p_rail") * KPA_PER_BAR,
      cylinderKPa: given("p_cyl") * KPA_PER_BAR,
      windowDeg: 720,
      deadTimeMs: 0,
    };
    expects("Q2", supplied(stage) / 3.6);
  });
});

describe("high-pressure pump", () => {
  test("three lobes: flow and the power it carries (geometry)", () => {
    const { given, expects } = vector("di-pump-limit");
    const displacementCm3PerCamRev = given("lobes") * given("V_stroke");
    const supply = supplied(
      { kind: "high-pressure-pump", displacementCm3PerCamRev, volumetricEfficiency: given("eta_v") },
      given("n"),
    );
    expects("Q", cm3PerMin(supply));
    expects("mdot", supply);
    const perKw = fuelDemand({ fuel: "petrol", brakePowerKw: 1, bsfcGPerKwh: given("BSFC") }).fuelKgPerH;
    expects("P_max", supply / perKw);
  });

  test("an 8 mm plunger lifted 4.2 mm (geometry)", () => {
    const { given, expects } = vector("di-pump-stroke");
    const strokeCm3 = (Math.PI / 4) * given("d") ** 2 * given("lift") * 1e-3;
    expects("V", strokeCm3);
    const supply = supplied({
      kind: "high-pressure-pump",
      displacementCm3PerCamRev: strokeCm3,
      volumetricEfficiency: 1,
    });
    expects("V", cm3PerMin(supply) / 3_000);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("fuel.json")).toEqual([]);
});
