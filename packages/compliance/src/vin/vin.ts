import { checkDigit } from "./check-digit";
import { isNorthAmerican, modelYears } from "./model-years";
import { worldCountry, worldRegion } from "./world-maker";

export type CheckDigit = { readonly expected: string; readonly found: string; readonly matches: boolean };

export type Vin = {
  /** Trimmed, upper-cased, without spaces and hyphens. */
  readonly vin: string;
  readonly wellFormed: boolean;
  readonly checkDigit: CheckDigit | null;
  readonly modelYears: readonly number[];
  readonly region: string | null;
  readonly country: string | null;
  /** What is wrong, a sentence each. */
  readonly problems: readonly string[];
  /** What is only worth knowing: outside North America the check digit is the maker's to use or not. */
  readonly notes: readonly string[];
};

/**
 * What a vehicle identification number says about itself.
 *
 * @source  ISO 3779 (17 characters, no I, O or Q); 49 CFR 565.15 (check digit, model year); ISO 3780.
 * @vectors shared/reference/vin.json
 */
export function vin(written: string): Vin {
  const normalised = normalise(written);
  const malformed = formProblems(normalised);
  if (malformed.length > 0) {
    const unknown = { checkDigit: null, modelYears: [], region: null, country: null };
    return { vin: normalised, wellFormed: false, ...unknown, problems: malformed, notes: [] };
  }
  const found = normalised.charAt(8);
  const expected = checkDigit(normalised);
  const years = modelYears(normalised);
  const remarks = [
    ...(found === expected
      ? []
      : [`The check digit in position 9 is ${found}, and ${expected} is expected.`]),
    ...(years.length > 0 ? [] : [`Position 10 holds ${normalised.charAt(9)}, which is no model year code.`]),
  ];
  const isBinding = isNorthAmerican(normalised);
  return {
    vin: normalised,
    wellFormed: true,
    checkDigit: { expected, found, matches: found === expected },
    modelYears: years,
    region: worldRegion(normalised),
    country: worldCountry(normalised),
    problems: isBinding ? remarks.map((remark) => `${remark} Check the VIN for a misread character.`) : [],
    notes: isBinding ? [] : remarks.map((remark) => `${remark} This is binding only in North America.`),
  };
}

/** Only the Latin letters are raised, so that no other letter can turn into one of them. */
function normalise(written: string): string {
  return written.replace(/[\s-]/g, "").replace(/[a-z]/g, (letter) => letter.toUpperCase());
}

function formProblems(candidate: string): readonly string[] {
  const length = [...candidate].length;
  const wrong = [...new Set([...candidate].filter((character) => !/[A-HJ-NPR-Z0-9]/.test(character)))];
  return [
    ...(length === 17 ? [] : [`A VIN has 17 characters and this one has ${length}: count again.`]),
    ...(wrong.length === 0
      ? []
      : [`A VIN holds digits and letters without I, O and Q: check ${wrong.slice(0, 5).join(" ")}.`]),
  ];
}
