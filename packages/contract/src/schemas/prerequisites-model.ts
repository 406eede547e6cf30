import type { Condition } from "@buildproof/prerequisites";
import { z } from "zod";
import { decimal, decimalFromZero, identifier } from "./decimal";

const condition: z.ZodType<Condition> = z.lazy(() =>
  z.union([
    z.strictObject({ item: identifier }),
    z.strictObject({ fact: identifier, atLeast: decimal }),
    z.strictObject({ all: z.array(condition) }),
    z.strictObject({ any: z.array(condition) }),
    z.strictObject({ not: condition }),
  ]),
);

const conditionRule = {
  id: identifier,
  when: condition.optional(),
  // biome-ignore lint/suspicious/noThenProperty: `then` is the contract's own word and nothing awaits a schema.
  then: condition,
  because: z.string().optional(),
};

const rule = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("needs"), ...conditionRule }),
  z.strictObject({ kind: z.literal("excludes"), ...conditionRule }),
  z.strictObject({
    kind: z.literal("capacity"),
    id: identifier,
    quantity: z.string().optional(),
    base: decimal.optional(),
    supply: z.record(identifier, decimal).optional(),
    demand: z.record(identifier, decimal).optional(),
    reservePct: decimalFromZero.optional(),
    because: z.string().optional(),
  }),
]);

/** One input for checking and for completing a selection. */
export const prerequisitesInput = z.strictObject({
  items: z.array(
    z.strictObject({
      id: identifier,
      price: decimalFromZero.optional(),
      hours: decimalFromZero.optional(),
      leadDays: decimalFromZero.optional(),
    }),
  ),
  groups: z
    .array(
      z.strictObject({
        id: identifier,
        pick: z.enum(["at-most-one", "exactly-one", "at-least-one"]),
        items: z.array(identifier),
      }),
    )
    .optional(),
  facts: z.record(identifier, decimal).optional(),
  rules: z.array(rule).optional(),
  chosen: z.array(identifier).optional(),
  barred: z.array(identifier).optional(),
  minimise: z.enum(["price", "hours", "leadDays"]).optional(),
});
