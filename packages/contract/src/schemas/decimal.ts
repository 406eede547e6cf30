import { z } from "zod";

/** A number, or the same decimal as text; text keeps more digits than a number can. */
export const decimal = z.union([z.number(), z.string().regex(/^[+-]?\d{1,40}(\.\d{1,40})?$/)], {
  error: "write a decimal number, such as 12.5",
});

export const decimalFromZero = z.union([z.number().min(0), z.string().regex(/^\+?\d{1,40}(\.\d{1,40})?$/)], {
  error: "write a decimal number of 0 or more, such as 12.5",
});

export const identifier = z.string().min(1, { error: "write an id of at least one character" });

export const minorUnitsSchema = z.int({
  error: `write a whole number of minor units (cents) within ±${Number.MAX_SAFE_INTEGER}`,
});
