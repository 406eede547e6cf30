import { abn } from "@buildproof/compliance";
import { z } from "zod";

const e164Digits = (phone: string) => phone.replace(/\D/g, "").length;

/** What is kept of a customer, as it is typed. */
export const customerFields = {
  name: z
    .string("Enter the customer's name.")
    .trim()
    .min(1, "Enter the customer's name.")
    .max(200, "A name has at most 200 characters."),
  phone: z
    .string()
    .trim()
    .max(40, "A telephone number has at most 40 characters.")
    .refine(
      (phone) =>
        phone === "" || (/^[+()\d\s.-]+$/.test(phone) && e164Digits(phone) >= 6 && e164Digits(phone) <= 15),
      "Enter the telephone number with digits, spaces and an optional + in front.",
    ),
  email: z
    .string()
    .trim()
    .max(254, "An e-mail address has at most 254 characters.")
    .refine(
      (email) => email === "" || z.email().safeParse(email).success,
      "Enter the e-mail address like name@place.example, or leave it empty.",
    ),
  address: z.string().trim().max(500, "An address has at most 500 characters."),
  /** Digits as the law writes them; empty for a private customer. */
  taxNumber: z
    .string()
    .trim()
    .transform((typed) => typed.replaceAll(/[\s.-]/g, ""))
    .refine(
      (digits) => digits === "" || abn(digits).valid || /^\d{15}$/.test(digits),
      "Enter the eleven digits of an ABN, or the fifteen of a Gulf tax number. One digit is off; check it.",
    )
    .default(""),
  notes: z.string().trim().max(4_000, "Notes have at most 4,000 characters."),
};

/** Somebody who can be reached. */
export const isReachable = (customer: { readonly phone: string; readonly email: string }): boolean =>
  customer.phone !== "" || customer.email !== "";

export const reachableMessage = {
  message: "Enter a telephone number or an e-mail address, so that the quote can reach them.",
  path: ["phone"],
};
