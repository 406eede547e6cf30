import { standardAtmosphere } from "@buildproof/engineering";
import {
  newtonMetres,
  powerFromTorque,
  revolutionsPerMinute,
  type UnitName,
  unitConvert,
} from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { type Measured, referenceVectors, unusedVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
const vectors = referenceVectors<Quantities, Quantities>("unit-convert.json");

/** Which of our units a vector is about, and how many of its stated unit make one of ours. */
const conversions: Readonly<Record<string, readonly [from: UnitName, to: UnitName, statedPerOurs: number]>> =
  {
    "unit-hp": ["hp", "kW", 1000],
    "unit-ps": ["PS", "kW", 1000],
    "unit-lbft": ["lbft", "Nm", 1],
    "unit-psi": ["psi", "kPa", 1],
    "unit-inhg": ["inHg", "kPa", 1],
    "unit-mph": ["mph", "kmh", 1],
    "unit-lb": ["lb", "kg", 1],
  };

describe("unit conversions", () => {
  test.each(vectors.filter(({ id }) => id in conversions))("$id ($source)", ({ id, inputs, expected }) => {
    const [from, to, statedPerOurs] = conversions[id] ?? (["kW", "kg", 1] as const); // filtered above
    const { value, tolerance } = expected.y ?? { value: Number.NaN, tolerance: 0 };
    const converted = unitConvert(inputs.x?.value ?? Number.NaN, from, to) * statedPerOurs;
    expect(Math.abs(converted - value)).toBeLessThanOrEqual(tolerance);
  });

  test.each([
    ["unit-usgal", 231 * unitConvert(1, "in", "mm") ** 3 * 1e-6],
    ["unit-cfm", (12 * unitConvert(1, "in", "mm")) ** 3 / 60 / 1e9],
    ["unit-bsfc", (1000 * unitConvert(1, "lb", "kg")) / unitConvert(1, "hp", "kW")],
    ["unit-atm", standardAtmosphere(0).pressureKPa],
  ])("%s, from units that we have", (id, ours) => {
    const { value, tolerance } = vectors.find((vector) => vector.id === id)?.expected.y ?? {
      value: Number.NaN,
      tolerance: 0,
    };
    expect(Math.abs(ours - value)).toBeLessThanOrEqual(tolerance);
  });

  test("water boils at 212 °F and freezes at 32 °F (definition of the Fahrenheit scale, NIST SP 811 B.9)", () => {
    expect(unitConvert(212, "degF", "degC")).toBe(100);
    expect(unitConvert(0, "degC", "degF")).toBe(32);
  });

  test("one inch is exactly 25.4 mm and one bar exactly 100 kPa (NIST SP 811 B.8)", () => {
    expect(unitConvert(1, "in", "mm")).toBe(25.4);
    expect(unitConvert(1, "bar", "kPa")).toBe(100);
  });

  test("one pound an hour is 0.1259979 g/s (NIST SP 811 B.8: 1.259 979 E-04 kg/s)", () => {
    expect(unitConvert(1, "lbph", "gps")).toBeCloseTo(0.1259979, 7);
  });
});

describe("power from torque", () => {
  test("400 N·m at 6000 rpm is 251.327 kW, 337.036 hp and 341.710 PS (identity P = T·ω)", () => {
    const power = powerFromTorque(newtonMetres(400), revolutionsPerMinute(6000));
    const expected = vectors.find(({ id }) => id === "power-400Nm-6000")?.expected;
    expect(power).toBeCloseTo(expected?.P_kW?.value ?? Number.NaN, 4);
    expect(unitConvert(power, "kW", "hp")).toBeCloseTo(expected?.P_hp?.value ?? Number.NaN, 4);
    expect(unitConvert(power, "kW", "PS")).toBeCloseTo(expected?.P_PS?.value ?? Number.NaN, 4);
  });

  test("horsepower and lbf·ft cross at 5252 rpm (33000 ÷ 2π)", () => {
    const crossover = vectors.find(({ id }) => id === "power-crossover");
    const torque = newtonMetres(unitConvert(crossover?.inputs.T?.value ?? Number.NaN, "lbft", "Nm"));
    const power = powerFromTorque(torque, revolutionsPerMinute(crossover?.inputs.n?.value ?? 0));
    expect(unitConvert(power, "kW", "hp")).toBeCloseTo(crossover?.expected.P?.value ?? Number.NaN, 4);
  });

  test("1200 N·m over both hubs at 1400 rpm is 175.929 kW (identity)", () => {
    const expected = vectors.find(({ id }) => id === "hub-power")?.expected.P?.value ?? Number.NaN;
    expect(powerFromTorque(newtonMetres(1200), revolutionsPerMinute(1400))).toBeCloseTo(expected, 4);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("unit-convert.json")).toEqual([]);
});
