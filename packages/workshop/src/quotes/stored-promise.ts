import { z } from "zod";

/** Power is promised as a band, at a stated place and reference condition, with what happens if it is missed. */
const storedPromise = z
  .object({
    at: z.enum(["hubs", "wheels"]),
    lowKw: z.number().positive(),
    highKw: z.number().positive(),
    referenceCondition: z.string(),
    remedy: z.string(),
  })
  .refine(({ lowKw, highKw }) => highKw >= lowKw, "A promise has a high end that is not below its low end.");

export type QuotePromise = z.output<typeof storedPromise>;

/** What a version promises; null where it promises no power. */
export function readPromise(json: unknown): QuotePromise | null {
  return json === null || json === undefined ? null : storedPromise.parse(json);
}
