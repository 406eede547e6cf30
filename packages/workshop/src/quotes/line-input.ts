import { exactDecimal } from "@buildproof/units";
import { z } from "zod";

const moreThanNothing = (typed: string) => exactDecimal(typed).coefficient > 0n;

/** A decimal with at most three decimals; a comma is no decimal point here. */
export const quantityInput = z
  .string()
  .trim()
  .regex(/^-?\d{1,5}(\.\d+)?$/, {
    error: "Enter the quantity as a number, for example 2 or 1.5.",
    abort: true,
  })
  .refine(moreThanNothing, "A quantity is more than nothing. To leave the line out, remove it.")
  .refine((typed) => exactDecimal(typed).scale <= 3, "A quantity has at most three decimals. Round it.");

export const discountInput = z
  .string()
  .trim()
  .transform((typed) => (typed === "" ? "0" : typed))
  .pipe(
    z
      .string()
      .regex(
        /^(\d{1,2}(\.\d{1,2})?|100(\.00?)?)$/,
        "A discount is between 0 and 100 %, with at most two decimals.",
      ),
  );

export const descriptionInput = z
  .string()
  .trim()
  .min(1, "Say what the line is for.")
  .max(200, "Keep the description under 200 characters.");

export const dateInput = z.iso.date("Choose a date.");
