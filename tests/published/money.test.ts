import { depositFor, margin } from "@buildproof/pricing";
import {
  basisPoints,
  type CurrencyCode,
  currencyDecimals,
  decimalAmount,
  minorUnits,
} from "@buildproof/units";
import { describe, expect, test } from "vitest";
import { referenceVectors, unusedVectors } from "./reference-vectors";

const minor = (written: string) => minorUnits(Number(written.replace(".", "")));

describe("currencies of ISO 4217", () => {
  type Inputs = { readonly currency: CurrencyCode; readonly minor: number };
  const vectors = referenceVectors<Inputs, { readonly minorUnits: number; readonly decimal: string }>(
    "currency.json",
  );
  test.each(vectors.filter(({ expected }) => expected.minorUnits !== undefined))(
    "$id ($source)",
    ({ inputs, expected }) => {
      expect(currencyDecimals(inputs.currency)).toBe(expected.minorUnits);
    },
  );
  test.each(vectors.filter(({ expected }) => expected.decimal !== undefined))(
    "$id ($source)",
    ({ inputs, expected }) => {
      expect(decimalAmount(minorUnits(inputs.minor), inputs.currency)).toBe(expected.decimal);
    },
  );
});

describe("gross margin", () => {
  type Inputs = Readonly<Record<"partsSell" | "partsCost" | "labourSell" | "labourCost", string>> & {
    readonly markupPct: number;
  };
  type Expected = Readonly<Record<"marginPct" | "gpPct" | "partsGpPct" | "labourGpPct", number>>;
  const vectors = referenceVectors<Inputs, Expected>("margin.json");
  const percent = (sell: number, cost: number) =>
    (margin(minorUnits(sell), minorUnits(cost)) ?? Number.NaN) / 100;

  test.each(vectors.filter(({ inputs }) => inputs.markupPct))("$id ($source)", ({ inputs, expected }) => {
    const cost = 1_000_000;
    expect(percent(Math.round(cost * (1 + inputs.markupPct / 100)), cost)).toBeCloseTo(expected.marginPct, 2);
  });

  test.each(vectors.filter(({ inputs }) => inputs.partsSell))("$id ($source)", ({ inputs, expected }) => {
    const [partsSell, partsCost] = [minor(inputs.partsSell), minor(inputs.partsCost)];
    const [labourSell, labourCost] = [minor(inputs.labourSell), minor(inputs.labourCost)];
    expect(percent(partsSell, partsCost)).toBe(expected.partsGpPct);
    expect(percent(labourSell, labourCost)).toBe(expected.labourGpPct);
    expect(percent(partsSell + labourSell, partsCost + labourCost)).toBe(expected.gpPct);
  });
});

describe("deposits", () => {
  type Inputs = { readonly totalInclusive: string; readonly depositPct: string };
  const vectors = referenceVectors<Inputs, { readonly deposit: string; readonly balance: string }>(
    "deposit.json",
  );
  test.each(vectors)("$id ($source)", ({ inputs, expected }) => {
    const answer = depositFor({
      totalMinor: minor(inputs.totalInclusive),
      share: basisPoints(Number(inputs.depositPct) * 100),
      nonReturnableCostMinor: minorUnits(0),
    });
    expect(answer).toMatchObject({
      depositMinor: minor(expected.deposit),
      balanceMinor: minor(expected.balance),
    });
  });
});

test.each(["margin.json", "deposit.json"])("every vector of %s is checked above", (file) => {
  expect(unusedVectors(file)).toEqual([]);
});
