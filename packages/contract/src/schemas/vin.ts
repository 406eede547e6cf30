import { vin } from "@buildproof/compliance";
import { z } from "zod";
import { calculation } from "../calculation";

export const vinCalculation = calculation({
  summary: "Form, check digit, model years and origin of a vehicle identification number",
  input: z.strictObject({ vin: z.string() }),
  output: z.strictObject({
    vin: z.string(),
    wellFormed: z.boolean(),
    checkDigit: z.strictObject({ expected: z.string(), found: z.string(), matches: z.boolean() }).nullable(),
    modelYears: z.array(z.int()).readonly(),
    region: z.string().nullable(),
    country: z.string().nullable(),
    problems: z.array(z.string()).readonly(),
    notes: z.array(z.string()).readonly(),
  }),
  run: (input) => vin(input.vin),
});
