import { z } from "zod";

const finding = z.object({ rule: z.string(), sentence: z.string(), safety: z.boolean() });

/** What was chosen on the build when a version was made, and what the check said: the JSON of `selection`. */
const storedSelection = z.object({
  packageCode: z
    .string()
    .nullish()
    .transform((code) => code ?? null),
  items: z
    .array(
      z.union([
        z.string().transform((code) => ({ code, name: code, quantity: 1 })),
        z.object({ code: z.string(), name: z.string().optional(), quantity: z.number().default(1) }),
      ]),
    )
    .transform((items) => items.map(({ code, name, quantity }) => ({ code, name: name ?? code, quantity }))),
  /** Until the slowest part that is not in stock is here; null when nobody worked it out. */
  leadDays: z
    .number()
    .nullish()
    .transform((days) => days ?? null),
  findings: z.array(finding).default([]),
});

export type Selection = z.output<typeof storedSelection>;

export function readSelection(json: unknown): Selection {
  return storedSelection.parse(json);
}

/** The same items in the same numbers, in whatever order. */
export function sameItems(one: Selection["items"], other: Selection["items"]): boolean {
  const key = (items: Selection["items"]) =>
    items
      .map(({ code, quantity }) => `${code}×${quantity}`)
      .sort()
      .join(" ");
  return key(one) === key(other);
}
