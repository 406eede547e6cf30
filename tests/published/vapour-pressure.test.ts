import { dynoCorrection, saturationPressure } from "@buildproof/engineering";
import { celsius, kelvin, kelvinFromCelsius } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { type Measured, referenceVectors, unusedVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
const vectors = referenceVectors<Quantities, Quantities>("vapour-pressure.json");
const saturation = vectors.filter(({ id }) => id.startsWith("vap-") && !id.includes("xh2o"));

/** Formulations differ among themselves by up to 0.3 % between 0 and 40 °C; ours is Wagner and Pruß. */
const BETWEEN_FORMULATIONS = 0.0035;
const OWN_TOLERANCE = new Set([
  "vap-wagner-25C",
  ...saturation.map(({ id }) => id).filter((id) => id.includes("crc")),
]);

describe("saturation pressure of water", () => {
  test.each(saturation)("$id ($source)", ({ id, inputs, expected }) => {
    const temperature = inputs.T
      ? kelvin(inputs.T.value)
      : kelvinFromCelsius(celsius(inputs.t?.value ?? Number.NaN));
    const { value, tolerance } = expected.p_sat ?? { value: Number.NaN, tolerance: 0 };
    const allowed = OWN_TOLERANCE.has(id) ? tolerance : value * BETWEEN_FORMULATIONS;
    expect(Math.abs(saturationPressure(temperature) - value)).toBeLessThanOrEqual(allowed);
  });

  test("the triple point is 0.611657 kPa (IAPWS, R. Feistel and W. Wagner 2006; value from memory)", () => {
    expect(saturationPressure(kelvin(273.16))).toBeCloseTo(0.611657, 5);
  });
});

describe("share of water vapour in moist air", () => {
  const share = (id: string) => {
    const found = vectors.find((vector) => vector.id === id);
    return {
      given: (name: string) => found?.inputs[name]?.value ?? Number.NaN,
      expected: found?.expected.x_H2O,
    };
  };
  const near = (actual: number, expected: Measured | undefined) =>
    expect(Math.abs(actual / (expected?.value ?? Number.NaN) - 1)).toBeLessThan(BETWEEN_FORMULATIONS);

  test("from relative humidity at 20 °C (40 CFR 1065.645, worked example)", () => {
    const { given, expected } = share("vap-cfr-xh2o-rh");
    const air = dynoCorrection({
      standard: "UN_R85",
      ignition: "spark",
      aspiration: "natural",
      barometerKPa: given("p_abs"),
      airTempC: 20,
      relativeHumidityPct: 100 * given("RH"),
    });
    near(air.vapourPressureKPa / given("p_abs"), expected);
  });

  test("from the dew point of 9.5 °C (40 CFR 1065.645, worked example)", () => {
    const { given, expected } = share("vap-cfr-xh2o-dew");
    near(saturationPressure(kelvinFromCelsius(celsius(9.5))) / given("p_abs"), expected);
  });
});

describe("dry air pressure", () => {
  test.each(vectors.filter(({ id }) => id.startsWith("dry-pressure")))(
    "$id ($source)",
    ({ inputs, expected }) => {
      const answer = dynoCorrection({
        standard: "UN_R85",
        ignition: "spark",
        aspiration: "natural",
        barometerKPa: inputs.p_baro?.value ?? Number.NaN,
        airTempC: inputs.t?.value ?? Number.NaN,
        relativeHumidityPct: (inputs.RH?.value ?? Number.NaN) * 100,
      });
      expect(Math.abs(answer.vapourPressureKPa - (expected.p_v?.value ?? 0))).toBeLessThan(1e-6);
      expect(Math.abs(answer.dryPressureKPa - (expected.p_dry?.value ?? 0))).toBeLessThan(1e-5);
    },
  );
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("vapour-pressure.json")).toEqual([]);
});
