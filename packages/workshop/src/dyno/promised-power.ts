import { z } from "zod";

const promised = z.object({
  at: z.enum(["hubs", "wheels"]).default("hubs"),
  lowKw: z.number().positive(),
  highKw: z.number().positive(),
  referenceCondition: z.string().default(""),
  remedy: z.string().default(""),
});

export type PromisedPower = z.output<typeof promised>;

/** The power an accepted version promises; null where it promises none. */
export function promisedPower(promise: unknown): PromisedPower | null {
  const read = promised.safeParse(promise);
  return read.success && read.data.highKw >= read.data.lowKw ? read.data : null;
}
