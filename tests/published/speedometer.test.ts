import { speedometer } from "@buildproof/engineering";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

type Numbers = Readonly<Record<string, number>>;
const vectors = referenceVectors<Numbers, Numbers & { readonly pass: boolean }>("speedometer.json");
const byRule = (rule: string) => {
  const found = vectors.filter((vector) => "rule" in vector && vector.rule === rule);
  if (found.length === 0) throw new Error(`No vector of ${rule}.`);
  return found;
};
const meets = (indicatedKmh: number | undefined, trueKmh: number | undefined) =>
  speedometer({ indicatedKmh: indicatedKmh ?? Number.NaN, trueKmh }).meetsUnR39;

describe("UN R39 paragraph 5.3", () => {
  test.each(byRule("speedo.r39.range"))("$id ($source)", ({ inputs, expected }) => {
    const { minIndicated = 0, maxIndicated = 0 } = expected;
    expect(meets(minIndicated, inputs.trueKmh)).toBe(true);
    expect(meets(maxIndicated, inputs.trueKmh)).toBe(true);
    expect(meets(minIndicated - 0.001, inputs.trueKmh)).toBe(false);
    expect(meets(maxIndicated + 0.001, inputs.trueKmh)).toBe(false);
  });

  test.each(byRule("speedo.r39.check"))("$id ($source)", ({ inputs, expected }) => {
    const answer = speedometer({ indicatedKmh: inputs.indicatedKmh ?? 0, trueKmh: inputs.trueKmh });
    expect(answer.meetsUnR39).toBe(expected.pass);
    expect(answer.recalibrationNeeded).toBe(!expected.pass);
  });

  test.each(byRule("speedo.r39.inverse"))("$id ($source)", ({ inputs, expected }) => {
    expect(meets(inputs.indicatedKmh, (expected.minTrueKmh ?? 0) + 0.01)).toBe(true);
    expect(meets(inputs.indicatedKmh, (expected.minTrueKmh ?? 0) - 0.01)).toBe(false);
    expect(meets(inputs.indicatedKmh, expected.maxTrueKmh)).toBe(true);
  });
});

describe("ADR 18/02, for vehicles before mid-2006: within a tenth of true", () => {
  test.each(byRule("speedo.adr1802.check"))("$id ($source)", ({ inputs, expected }) => {
    const { errorPct } = speedometer({ indicatedKmh: inputs.indicatedKmh ?? 0, trueKmh: inputs.trueKmh });
    expect(Math.abs(errorPct) <= 10 + 1e-9).toBe(expected.pass);
  });
});

/** Designations whose design diameter is the vector's. */
const OF_DIAMETER: Readonly<Record<number, string>> = {
  775: "265/60R18",
  776: "265/65R17",
  804: "265/70R17",
  832: "285/70R17",
  889: "35x12.50R18LT",
};

describe("after a tyre change", () => {
  test.each(byRule("speedo.afterTyreChange"))("$id ($source)", ({ inputs, expected }) => {
    const { indicatedBeforeAtTrue100 = 0, oldOdMm = 0, newOdMm = 0 } = inputs;
    const change = {
      standardTyre: OF_DIAMETER[oldOdMm],
      fittedTyre: OF_DIAMETER[newOdMm],
      standardErrorPct: indicatedBeforeAtTrue100 - 100,
    };
    const at100 = speedometer({ ...change, indicatedKmh: 100 });
    expect(at100.trueKmh).toBeCloseTo((100 * 100 * newOdMm) / (indicatedBeforeAtTrue100 * oldOdMm), 9);
    const atTrue100 = speedometer({ ...change, indicatedKmh: expected.indicatedAfterAtTrue100 ?? 0 });
    expect(Math.abs(atTrue100.trueKmh - 100)).toBeLessThan(0.006);
    expect(atTrue100.meetsUnR39).toBe(expected.pass);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("speedometer.json")).toEqual([]);
});
