import {
  gearingChange,
  massBudget,
  standardAtmosphere,
  trailerWheelMassKg,
  tyre,
  tyreFitness,
} from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { type Measured, referenceVectors, unusedVectors } from "./reference-vectors";

type Values = Readonly<Record<string, number | string | boolean>>;
const vectors = referenceVectors<Values, Values>("masses.json");
const byRule = (rule: string) => {
  const found = vectors.filter((vector) => "rule" in vector && vector.rule === rule);
  if (found.length === 0) throw new Error(`No vector of ${rule}.`);
  return found;
};

describe("masses", () => {
  test.each(byRule("au.payload"))("$id ($source)", ({ inputs, expected }) => {
    const answer = massBudget({
      kerbKg: Number(inputs.kerbKg),
      addedKg: [Number(inputs.accessoriesKg)],
      carriedKg: 0,
      gvmKg: Number(inputs.gvmKg),
      gcmKg: 6000,
      brakedTowKg: 0,
    });
    expect(answer.payloadKg).toBe(expected.payloadKg);
  });

  test.each(byRule("au.gcm"))("$id ($source)", ({ inputs, expected }) => {
    const answer = massBudget({
      kerbKg: Number(inputs.vehicleMassKg),
      addedKg: [],
      carriedKg: 0,
      gvmKg: Number(inputs.gvmKg),
      gcmKg: Number(inputs.gcmKg),
      brakedTowKg: Number(inputs.brakedTowKg),
    });
    expect(answer.maxTrailerKg).toBe(expected.maxTrailerKg);
    expect(answer.trailerLimit).toBe(expected.limitedBy === "GCM" ? "combination" : "tow-rating");
  });

  test.each(byRule("au.gtmFromAtm"))("$id ($source)", ({ inputs, expected }) => {
    expect(trailerWheelMassKg(Number(inputs.atmKg), Number(inputs.towballDownloadKg))).toBe(expected.gtmKg);
  });

  test.each(byRule("tyre.axleCapacity"))("$id ($source)", ({ inputs, expected }) => {
    const answer = tyreFitness(`265/70R17 ${inputs.loadIndex}S`, Number(inputs.axleRatingKg), 180);
    expect(answer).toMatchObject({ axleCapacityKg: expected.axleCapacityKg, carries: expected.ok });
  });
});

/** Designations whose design diameter is the vector's. */
const OF_DIAMETER: Readonly<Record<string, string>> = {
  775: "265/60R18",
  776: "265/65R17",
  804: "265/70R17",
  832: "285/70R17",
  889: "35x12.50R18LT",
};

test.each(byRule("tyre.rideHeightFromTyre"))("$id ($source)", ({ inputs, expected }) => {
  const { rideHeightRiseMm } = gearingChange({
    standardTyre: OF_DIAMETER[String(inputs.oldOdMm)] ?? "",
    fittedTyre: OF_DIAMETER[String(inputs.newOdMm)] ?? "",
    finalDrive: 3.9,
    gear: 1,
  });
  expect(rideHeightRiseMm).toBeCloseTo(Number(expected.riseMm), 9);
});

test.each(byRule("au.tyreDiameter.delta"))("$id ($source)", ({ inputs, expected }) => {
  const sizes = [inputs.oldOdMm, inputs.newOdMm].map((mm) => OF_DIAMETER[String(mm)] ?? "");
  const [before = Number.NaN, after = Number.NaN] = sizes.map((size) => tyre(size).overallDiameterMm);
  expect(after - before).toBe(expected.deltaMm);
  expect((100 * after) / before - 100).toBeCloseTo(Number(expected.deltaPct), 2);
  expect(after - before <= 50).toBe(expected.within50mm);
  expect(after / before <= 1.07).toBe(expected.within7pct);
});

describe("standard atmosphere of ISO 2533", () => {
  type Quantities = Readonly<Record<string, Measured>>;
  const air = referenceVectors<Quantities, Quantities>("standard-atmosphere.json");
  test.each(air)("$id ($source)", ({ inputs, expected }) => {
    const answer = standardAtmosphere(inputs.H?.value ?? Number.NaN);
    const { p, T } = expected;
    expect(Math.abs(answer.pressureKPa * 1000 - (p?.value ?? 0))).toBeLessThanOrEqual(p?.tolerance ?? 0);
    expect(Math.abs(answer.tempC + 273.15 - (T?.value ?? 0))).toBeLessThanOrEqual(T?.tolerance ?? 0);
  });
});

test.each(["masses.json", "standard-atmosphere.json"])("every vector of %s is checked above", (file) => {
  expect(unusedVectors(file)).toEqual([]);
});
