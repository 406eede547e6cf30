import type { Condition } from "@buildproof/prerequisites";
import { z } from "zod";
import type { CapacityAmount } from "./capacity-amount";

/** How rules and packages lie in the database's JSON columns. */
export const storedCondition: z.ZodType<Condition> = z.lazy(() =>
  z.union(
    [
      z.strictObject({ item: z.string() }),
      z.strictObject({ fact: z.string(), atLeast: z.number() }),
      z.strictObject({ all: z.array(storedCondition) }),
      z.strictObject({ any: z.array(storedCondition) }),
      z.strictObject({ not: storedCondition }),
    ],
    "A condition names an item, a fact with what it is at least, or is all, any or not of conditions.",
  ),
);

/** Item code → amount in the rule's unit. */
export const storedAmounts: z.ZodType<Record<string, CapacityAmount>> = z.record(
  z.string(),
  z.union([z.number(), z.strictObject({ whole: z.number(), lessFact: z.string() })]),
);

export const storedFacts = z.record(z.string(), z.number());

const tow = z.number().positive("What it can tow is more than 0 kg.");

const whole =
  "A promise of power says from and to how many kW, under what condition, and what happens if it is missed; a promise to tow says how many kg.";

/** Power as a band at the hubs, with the boost it is made at and the mass it can tow; or a mass to tow alone. */
export const storedPromise = z.union(
  [
    z
      .object({
        at: z.literal("hubs"),
        lowKw: z.number().positive("A promised power is more than 0 kW."),
        highKw: z.number().positive("A promised power is more than 0 kW."),
        referenceCondition: z.string().trim().min(1, "Say under what condition the power is promised."),
        remedy: z.string().trim().min(1, "Say what happens if the promise is missed."),
        boostKPa: z.number().positive("Boost is more than 0 kPa.").optional(),
        towKg: tow.optional(),
      })
      .refine(
        ({ lowKw, highKw }) => highKw >= lowKw,
        "The high end of the promised power is not below its low end.",
      ),
    z.strictObject({ towKg: tow }),
  ],
  whole,
);
