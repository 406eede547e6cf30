import { vin } from "@buildproof/compliance";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

type Inputs = {
  readonly vin: string;
  readonly first: string;
  readonly yearCode: string;
  readonly position7: string | null;
};
type Expected = {
  readonly valid: boolean;
  readonly checkDigit: string;
  readonly computed: string;
  readonly actual: string;
  readonly normalised: string;
  readonly checkDigitMandatory: boolean;
  readonly year: number;
  readonly candidates: readonly number[];
  readonly region: string;
  readonly formatValid: boolean;
};
const vectors = referenceVectors<Inputs, Expected>("vin.json");
const byRule = (rule: string) => vectors.filter((vector) => "rule" in vector && vector.rule === rule);

describe("check digit of 49 CFR 565.15(c)", () => {
  test.each(byRule("vin.checkDigit"))("$id ($source)", ({ inputs, expected }) => {
    const answer = vin(inputs.vin);
    expect(answer.wellFormed).toBe(true);
    expect(answer.checkDigit?.matches).toBe(expected.valid);
    expect(answer.checkDigit?.expected).toBe(expected.checkDigit ?? expected.computed);
    expect(answer.checkDigit?.found).toBe(inputs.vin.charAt(8));
  });

  test.each(byRule("vin.checkDigit.region"))(
    "$id binds only in North America ($source)",
    ({ inputs, expected }) => {
      const answer = vin(inputs.vin);
      expect(answer.checkDigit?.matches).toBe(false);
      expect(answer.problems.length > 0).toBe(expected.checkDigitMandatory);
      expect(answer.notes.length > 0).toBe(!expected.checkDigitMandatory);
    },
  );
});

describe("form of ISO 3779", () => {
  test.each(byRule("vin.format"))("$id ($source)", ({ inputs, expected }) => {
    const answer = vin(inputs.vin);
    expect(answer).toMatchObject({
      wellFormed: expected.formatValid,
      checkDigit: null,
      modelYears: [],
      region: null,
      country: null,
    });
    expect(answer.problems.length).toBeGreaterThan(0);
  });

  test.each(byRule("vin.normalise"))("$id", ({ inputs, expected }) => {
    expect(vin(inputs.vin).vin).toBe(expected.normalised);
  });
});

describe("model year of 49 CFR 565.15", () => {
  /** A European form, where position 7 says nothing: both cycles remain. */
  const withYear = (code: string) => `WAAZZZ9Z1${code}A000001`;

  test("every code stands for two years, thirty apart ($source: table from memory)", () => {
    const [table] = byRule("vin.modelYear.table");
    const codes = Object.entries((table?.expected ?? {}) as unknown as Record<string, readonly number[]>);
    expect(codes).toHaveLength(30);
    for (const [code, years] of codes) expect(vin(withYear(code)).modelYears).toEqual(years);
  });

  test.each(byRule("vin.modelYear").filter(({ inputs }) => inputs.vin))(
    "$id ($source)",
    ({ inputs, expected }) => {
      expect(vin(inputs.vin).modelYears).toEqual([expected.year]);
    },
  );

  test.each(byRule("vin.modelYear").filter(({ inputs }) => !inputs.vin))(
    "$id ($source)",
    ({ inputs, expected }) => {
      const answer = vin(withYear(inputs.yearCode));
      expect(answer.modelYears).toEqual(expected.candidates ?? []);
    },
  );
});

describe("allocation of ISO 3780 (from memory)", () => {
  const REGION_OF: Readonly<Record<string, string>> = {
    "1": "North America",
    "2": "North America",
    "3": "North America",
    "6": "Oceania",
    J: "Asia",
    W: "Europe",
  };
  test.each(byRule("vin.wmi.region"))("$id", ({ inputs, expected }) => {
    const answer = vin(`${inputs.first}AAZZZ9Z1KA000001`);
    expect(answer.region).toBe(REGION_OF[inputs.first]);
    const country = expected.region.replace(/^Oceania \(6A-6W (\w+)\)$/, "$1");
    expect(answer.country).toBe(country);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("vin.json")).toEqual([]);
});
