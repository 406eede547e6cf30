import { z } from "zod";

/** Power is promised as a band, at a stated place and reference condition, with what happens if it is missed. */
const storedPromise = z.object({
  at: z.enum(["hubs", "wheels"]),
  lowKw: z.number(),
  highKw: z.number(),
  referenceCondition: z.string(),
  remedy: z.string(),
});

export type QuotePromise = z.output<typeof storedPromise>;

export function readPromise(json: unknown): QuotePromise | null {
  return json === null || json === undefined ? null : storedPromise.parse(json);
}
