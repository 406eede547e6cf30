import { type Jurisdiction, quoteTotals, type TaxRounding } from "@buildproof/pricing";
import { minorUnits, roundedQuotient } from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

type Inputs = Readonly<Record<"exLines" | "lines", readonly string[]>> &
  Readonly<Record<"exTotal" | "inclusive" | "exclusive" | "amount", string>> & {
    readonly values: readonly string[];
  };
type Expected = Readonly<Record<string, string>> & { readonly results: readonly string[] };
const gst = referenceVectors<Inputs, Expected>("gst-rounding.json");
const vat = referenceVectors<Inputs, Expected>("vat-rounding.json");
const ofRule = (vectors: typeof gst, rule: string) => {
  const found = vectors.filter((vector) => "rule" in vector && vector.rule === rule);
  if (found.length === 0) throw new Error(`No vector for ${rule}.`);
  return found;
};

/** "12.35" as 1235. */
const minor = (written: string | undefined) => minorUnits(Number((written ?? "").replace(".", "")));

function totals(
  amounts: readonly string[],
  pricesIncludeTax: boolean,
  jurisdiction: Jurisdiction,
  rounding?: TaxRounding,
) {
  return quoteTotals({
    currency: { AU: "AUD", AE: "AED", SA: "SAR" }[jurisdiction] as "AUD",
    jurisdiction,
    pricesIncludeTax,
    rounding,
    lines: amounts.map((amount) => ({ quantity: 1, unitPriceMinor: minor(amount), taxCategory: "S" })),
  });
}

describe("GST of Australia, GST Act 1999 (Cth) s 9-90", () => {
  test.each(ofRule(gst, "gst.rounding").filter(({ inputs }) => inputs.exLines))(
    "$id ($source)",
    ({ inputs, expected }) => {
      expect(totals(inputs.exLines, false, "AU", "total").taxMinor).toBe(minor(expected.totalInvoiceRule));
      expect(totals(inputs.exLines, false, "AU", "line").taxMinor).toBe(minor(expected.lineRule2dp));
      expect(totals(inputs.exLines, false, "AU").taxMinor).toBe(minor(expected.totalInvoiceRule));
    },
  );

  test.each(ofRule(gst, "gst.rounding").filter(({ inputs }) => inputs.exTotal))(
    "$id ($source)",
    ({ inputs, expected }) => {
      expect(totals([inputs.exTotal], false, "AU", "total").taxMinor).toBe(minor(expected.totalInvoiceRule));
    },
  );

  test.each(ofRule(gst, "gst.fromInclusive"))("$id ($source)", ({ inputs, expected }) => {
    expect(totals([inputs.inclusive], true, "AU")).toMatchObject({
      taxMinor: minor(expected.gst),
      netMinor: minor(expected.exclusive),
      grossMinor: minor(inputs.inclusive),
    });
  });

  test.each(ofRule(gst, "gst.fromExclusive"))("$id ($source)", ({ inputs, expected }) => {
    expect(totals([inputs.exclusive], false, "AU")).toMatchObject({
      taxMinor: minor(expected.gst),
      grossMinor: minor(expected.inclusive),
    });
  });
});

describe("VAT of the UAE, Public Clarification VATP006", () => {
  test.each(ofRule(vat, "uae.vat.lineRounding"))("$id ($source)", ({ inputs, expected }) => {
    expect(totals(inputs.exLines, false, "AE").taxMinor).toBe(minor(expected.vatPerLine));
    expect(totals(inputs.exLines, false, "AE", "total").taxMinor).toBe(minor(expected.vatIfOnTotal));
  });

  test.each(ofRule(vat, "uae.vat.fromInclusive"))("$id ($source)", ({ inputs, expected }) => {
    const { grossMinor, taxMinor } = totals(inputs.lines, true, "AE");
    expect({ grossMinor, taxMinor }).toEqual({
      grossMinor: minor(expected.total),
      taxMinor: minor(expected.vat),
    });
  });

  test.each(ofRule(vat, "uae.vat.round"))("$id ($source)", ({ inputs, expected }) => {
    expect(roundedQuotient(BigInt(minor(inputs.amount)), 10n)).toBe(BigInt(minor(expected.rounded)));
  });
});

describe("VAT of Saudi Arabia", () => {
  test.each(ofRule(vat, "ksa.vat.fromExclusive"))("$id ($source)", ({ inputs, expected }) => {
    expect(totals([inputs.exclusive], false, "SA")).toMatchObject({
      taxMinor: minor(expected.vat),
      grossMinor: minor(expected.inclusive),
    });
  });
});

test.each(ofRule(vat, "xpath.round"))(
  "$id: halves go towards plus infinity ($source)",
  ({ inputs, expected }) => {
    const rounded = inputs.values.map((value) => roundedQuotient(BigInt(Number(value) * 10), 10n));
    expect(rounded).toEqual(expected.results.map((result) => BigInt(Number(result))));
  },
);

test.each(["gst-rounding.json", "vat-rounding.json"])("every vector of %s is checked above", (file) => {
  expect(unusedVectors(file)).toEqual([]);
});
