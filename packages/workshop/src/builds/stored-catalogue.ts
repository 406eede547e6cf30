import type { Condition } from "@buildproof/prerequisites";
import { z } from "zod";
import type { CapacityAmount } from "./capacity-amount";

/** How rules and packages lie in the database's JSON columns. */
export const storedCondition: z.ZodType<Condition> = z.lazy(() =>
  z.union([
    z.strictObject({ item: z.string() }),
    z.strictObject({ fact: z.string(), atLeast: z.number() }),
    z.strictObject({ all: z.array(storedCondition) }),
    z.strictObject({ any: z.array(storedCondition) }),
    z.strictObject({ not: storedCondition }),
  ]),
);

/** Item code → amount in the rule's unit. */
export const storedAmounts: z.ZodType<Record<string, CapacityAmount>> = z.record(
  z.string(),
  z.union([z.number(), z.strictObject({ whole: z.number(), lessFact: z.string() })]),
);

export const storedFacts = z.record(z.string(), z.number());

export const storedPromise = z.object({
  at: z.literal("hubs"),
  lowKw: z.number(),
  highKw: z.number(),
  referenceCondition: z.string(),
  remedy: z.string(),
});
