import { type CorrectionQuestion, dynoCorrection } from "@buildproof/engineering";
import { unitConvert } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { type Measured, type ReferenceVector, referenceVectors, unusedVectors } from "./reference-vectors";

type Quantities = Readonly<Record<string, Measured>>;
type Vector = ReferenceVector<Quantities, Quantities>;
const vectors = referenceVectors<Quantities, Quantities>("dyno-correction.json");

function starting(...prefixes: readonly string[]): readonly Vector[] {
  const found = vectors.filter(({ id }) => prefixes.some((prefix) => id.startsWith(prefix)));
  if (found.length === 0) throw new Error(`No vector begins with ${prefixes.join(" or ")}.`);
  return found;
}

function given(vector: Vector, name: string): number {
  const quantity = vector.inputs[name];
  if (!quantity) throw new Error(`${vector.id} gives no ${name}.`);
  return quantity.value;
}

/** The vectors state dry pressure and kelvin; the codes write T = t + 273. */
function dryAir(
  vector: Vector,
  pressure: string,
): Pick<CorrectionQuestion, "barometerKPa" | "vapourPressureKPa" | "airTempC"> {
  return { barometerKPa: given(vector, pressure), vapourPressureKPa: 0, airTempC: given(vector, "T") - 273 };
}

function expectWithin(actual: number, expected: Measured | undefined, atLeast = 1e-12): void {
  if (!expected) throw new Error("The vector expects nothing.");
  expect(Math.abs(actual - expected.value)).toBeLessThanOrEqual(Math.max(expected.tolerance, atLeast));
}

const spark = { ignition: "spark", aspiration: "natural" } as const;
const compression = { ignition: "compression", standard: "UN_R85" } as const;

describe("SAE J1349", () => {
  test.each(starting("j1349-1990", "j1349-2004"))("$id ($source)", (vector) => {
    const edition = vector.id.startsWith("j1349-1990") ? "JUN1990" : "AUG2004";
    const { factor } = dynoCorrection({
      ...spark,
      standard: "SAE_J1349",
      edition,
      ...dryAir(vector, "p_dry"),
    });
    expectWithin(factor, vector.expected.CF);
  });

  test.each(starting("j1349-exact"))("$id ($source)", (vector) => {
    const { factor } = dynoCorrection({
      ...spark,
      standard: "SAE_J1349",
      ...dryAir(vector, "p_dry"),
      mechanicalEfficiency: given(vector, "eta_mech"),
    });
    expectWithin(factor, vector.expected.CF);
  });

  test.each(starting("j1349-measured-friction"))(
    "$id, friction as mechanical efficiency ($source)",
    (vector) => {
      const observedPowerKw = given(vector, "P_obs");
      const { correctedPowerKw } = dynoCorrection({
        ...spark,
        standard: "SAE_J1349",
        ...dryAir(vector, "p_dry"),
        observedPowerKw,
        mechanicalEfficiency: observedPowerKw / (observedPowerKw + given(vector, "P_fric")),
      });
      expectWithin(correctedPowerKw ?? Number.NaN, vector.expected.P_corr);
    },
  );
});

describe("UN R85, spark ignition", () => {
  test.each(starting("r85-si"))("$id ($source)", (vector) => {
    const answer = dynoCorrection({ ...spark, standard: "UN_R85", ...dryAir(vector, "p_s") });
    expectWithin(answer.factor, vector.expected.alpha_a);
    expect(answer.valid).toBe(Boolean(vector.expected.within_limits?.value));
  });
});

describe("UN R85 and ISO 1585, compression ignition", () => {
  /** 95 kPa dry and 308 K: f_a of a natural engine differs enough from 1 to read f_m off the factor. */
  const air = { barometerKPa: 95, vapourPressureKPa: 0, airTempC: 35 };
  const naturalFactor = (99 / 95) * (308 / 298) ** 0.7;

  test.each(starting("r85-ci-fm", "iso1585-ci-fm"))("$id ($source)", (vector) => {
    const edition = vector.id.startsWith("r85") ? "R85" : "ISO1585";
    const fuel = given(vector, "qc");
    const { factor } = dynoCorrection({
      ...compression,
      edition,
      aspiration: "natural",
      ...air,
      fuelMgPerLPerCycle: fuel,
    });
    expectWithin(Math.log(factor) / Math.log(naturalFactor), vector.expected.f_m, 1e-9);
  });

  test.each(starting("ci-fa-na-mechsc"))("$id, where f_m is 1 at 59.444 mg ($source)", (vector) => {
    for (const aspiration of ["natural", "mechanical"] as const) {
      const { factor } = dynoCorrection({
        ...compression,
        aspiration,
        ...dryAir(vector, "p_s"),
        fuelMgPerLPerCycle: (1 + 1.14) / 0.036,
      });
      expectWithin(factor, vector.expected.f_a);
    }
  });

  test.each(starting("ci-q-qc"))(
    "$id: fuel per cycle counts after division by the boost ratio ($source)",
    (vector) => {
      const q = (120_000 * given(vector, "mdot")) / (given(vector, "V") * given(vector, "n"));
      expectWithin(q, vector.expected.q);
      const boosted = dynoCorrection({
        ...compression,
        aspiration: "turbo",
        ...air,
        fuelMgPerLPerCycle: q,
        boostRatio: given(vector, "r"),
      });
      const unboosted = dynoCorrection({
        ...compression,
        aspiration: "turbo",
        ...air,
        fuelMgPerLPerCycle: vector.expected.qc?.value ?? Number.NaN,
      });
      expect(boosted.factor).toBeCloseTo(unboosted.factor, 7);
    },
  );

  test.each([
    ["ci-r85-turbo-1.5", "R85", "turbo"],
    ["ci-r85-turbo-1.5", "R85", "turbo-cooled"],
    ["ci-iso-turbo-airair-1.2", "ISO1585", "turbo"],
    ["ci-iso-turbo-airwater-0.7", "ISO1585", "turbo-cooled"],
  ] as const)("%s as %s %s", (id, edition, aspiration) => {
    const [vector] = starting(id);
    if (!vector) throw new Error(id);
    // q and r of the vector ci-q-qc give this vector's f_m.
    const { factor } = dynoCorrection({
      ...compression,
      edition,
      aspiration,
      ...dryAir(vector, "p_s"),
      fuelMgPerLPerCycle: 126.05042,
      boostRatio: 2.3,
    });
    expectWithin(factor, vector.expected.alpha_d);
  });
});

describe("superseded codes", () => {
  test.each(starting("din70020"))("$id takes the total pressure ($source)", (vector) => {
    const answer = dynoCorrection({
      ...spark,
      standard: "DIN_70020",
      barometerKPa: given(vector, "p") / 10,
      airTempC: given(vector, "t"),
      relativeHumidityPct: 80,
    });
    expectWithin(answer.factor, vector.expected.F);
    expect(answer).toMatchObject({ valid: true, warnings: ["superseded"] });
  });

  test.each(starting("j607"))("$id ($source)", (vector) => {
    const answer = dynoCorrection({
      ...spark,
      standard: "SAE_J607",
      barometerKPa: unitConvert(given(vector, "p_baro"), "inHg", "kPa"),
      airTempC: unitConvert(given(vector, "t"), "degF", "degC"),
      relativeHumidityPct: given(vector, "RH") * 100,
    });
    expectWithin(answer.factor, vector.expected.CF);
    expect(answer.warnings).toContain("superseded");
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("dyno-correction.json")).toEqual([]);
});
