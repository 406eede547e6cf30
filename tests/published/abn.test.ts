import { abn } from "@buildproof/compliance";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

type Inputs = { readonly abn: string; readonly nineDigits: string };
type Expected = {
  readonly valid: boolean;
  readonly normalised: string;
  readonly display: string;
  readonly abn: string;
};
const vectors = referenceVectors<Inputs, Expected>("abn.json");
const byRule = (rule: string) => vectors.filter((vector) => "rule" in vector && vector.rule === rule);

describe("Australian Business Number", () => {
  test.each([...byRule("abn.checksum"), ...byRule("abn.format")])("$id ($source)", ({ inputs, expected }) => {
    expect(abn(inputs.abn).valid).toBe(expected.valid);
  });

  test.each(byRule("abn.normalise"))("$id ($source)", ({ inputs, expected }) => {
    expect(abn(inputs.abn)).toEqual({ valid: true, abn: expected.normalised, display: expected.display });
  });

  test.each(byRule("abn.checkDigits"))(
    "$id: the published check digits pass, and no others of 11 to 99 ($source)",
    ({ inputs, expected }) => {
      const passing = Array.from({ length: 89 }, (_, index) => `${index + 11}${inputs.nineDigits}`).filter(
        (candidate) => abn(candidate).valid,
      );
      expect(passing).toEqual([expected.abn]);
    },
  );
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("abn.json")).toEqual([]);
});
