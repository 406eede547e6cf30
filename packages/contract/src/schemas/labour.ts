import { labour } from "@buildproof/pricing";
import { z } from "zod";
import { calculation } from "../calculation";
import { decimalFromZero, identifier } from "./decimal";

const identifiers = z.array(identifier);

export const labourCalculation = calculation({
  summary: "Hours of a set of operations, shared access work counted once",
  readsExactDecimals: true,
  input: z.strictObject({
    access: z.array(
      z.strictObject({ id: identifier, hours: decimalFromZero, needs: identifiers.optional() }),
    ),
    operations: z.array(
      z.strictObject({ id: identifier, hours: decimalFromZero, access: identifiers.optional() }),
    ),
  }),
  output: z.strictObject({
    hours: z.number(),
    accessHours: z.number(),
    ownHours: z.number(),
    savedHours: z.number(),
    accessUsed: z.array(z.string()).readonly(),
  }),
  run: labour,
});
