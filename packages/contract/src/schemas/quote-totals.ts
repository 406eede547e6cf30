import { jurisdictions, quoteTotals, taxCategories, taxRoundings } from "@buildproof/pricing";
import { currencyCodes, minorUnits } from "@buildproof/units";
import { z } from "zod";
import { calculation } from "../calculation";
import { decimal, decimalFromZero, minorUnitsSchema } from "./decimal";

const totals = { netMinor: z.int(), taxMinor: z.int(), grossMinor: z.int() };

const quoteLine = z.strictObject({
  quantity: decimal,
  unitPriceMinor: minorUnitsSchema,
  discountPct: decimalFromZero.optional(),
  taxCategory: z.enum(taxCategories, { error: `choose one of ${taxCategories.join(", ")}` }),
});

export const quoteTotalsCalculation = calculation({
  summary: "Net, tax and gross of the lines of a quote, rounded as the jurisdiction allows",
  readsExactDecimals: true,
  input: z.strictObject({
    currency: z.enum(currencyCodes, { error: `choose one of ${currencyCodes.join(", ")}` }),
    jurisdiction: z.enum(jurisdictions, { error: `choose one of ${jurisdictions.join(", ")}` }),
    pricesIncludeTax: z.boolean(),
    lines: z.array(quoteLine),
    discountMinor: minorUnitsSchema.optional(),
    rounding: z.enum(taxRoundings, { error: `choose one of ${taxRoundings.join(", ")}` }).optional(),
  }),
  output: z.strictObject({
    currency: z.string(),
    rounding: z.enum(taxRoundings),
    lines: z.array(z.strictObject(totals)).readonly(),
    ...totals,
    taxes: z
      .array(z.strictObject({ taxCategory: z.enum(taxCategories), ratePct: z.number(), ...totals }))
      .readonly(),
  }),
  run: ({ lines, discountMinor = 0, ...quote }) =>
    quoteTotals({
      ...quote,
      lines: lines.map((line) => ({ ...line, unitPriceMinor: minorUnits(line.unitPriceMinor) })),
      discountMinor: minorUnits(discountMinor),
    }),
});
