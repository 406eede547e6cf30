import { tyre } from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { catalogue } from "./catalogue";
import { modelChassis } from "./model-chassis";

/* Invented figures, held together: what the rules of the catalogue take as spare must be what the masses leave. */
const PERSON_KG = 75;

describe.each(catalogue.models)("$id", ({ id, facts, kerbMassKg, standardTyre }) => {
  const { masses, road } = modelChassis[id];
  const people = masses.seatRows.reduce((sum, { seats }) => sum + seats * PERSON_KG, 0);
  const peopleInFront = masses.seatRows.reduce(
    (sum, { seats, frontAxleShare }) => sum + seats * PERSON_KG * frontAxleShare,
    0,
  );

  test("the axles carry the kerb mass, and what is spare with every seat taken is what the rules say", () => {
    expect(masses.kerbFrontKg + masses.kerbRearKg).toBe(kerbMassKg);
    expect(masses.gvmKg - kerbMassKg - people).toBe(facts.payloadSpareKg);
    expect(masses.frontRatingKg - masses.kerbFrontKg - peopleInFront).toBeCloseTo(
      facts.frontAxleSpareKg ?? 0,
      9,
    );
  });

  test("the rear axle and the combination leave what the rules say; brakes, radiator and grade have a base", () => {
    const rear = masses.rearRatingKg - masses.kerbRearKg - (people - peopleInFront);
    expect(rear).toBeCloseTo(facts.rearAxleSpareKg ?? 0, 9);
    expect(masses.gcmKg - kerbMassKg - people).toBe(facts.combinationSpareKg);
    for (const fact of ["brakeSpareKg", "coolingSpareKw", "towOnGradeKg"]) {
      expect(facts[fact], fact).toBeGreaterThan(0);
    }
  });

  test("plates and tyres do not contradict one another", () => {
    const { loadKg, speedKmh } = tyre(standardTyre);
    expect(masses.frontRatingKg + masses.rearRatingKg).toBeGreaterThanOrEqual(masses.gvmKg);
    expect(2 * (loadKg ?? 0)).toBeGreaterThanOrEqual(Math.max(masses.frontRatingKg, masses.rearRatingKg));
    expect(speedKmh).toBeGreaterThanOrEqual(road.topSpeedKmh);
    expect(masses.gcmKg).toBeGreaterThan(masses.gvmKg);
  });
});

test("every item that weighs something says where it sits, and a towing duty what rests on the ball", () => {
  const silent = catalogue.items
    .filter(({ massKg }) => massKg > 0)
    .filter(({ figures }) => {
      const { masses } = figures;
      return !(typeof masses === "object" && ("frontAxleShare" in masses || "ballKg" in masses));
    });
  expect(silent.map(({ id }) => id)).toEqual([]);
});
