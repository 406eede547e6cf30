import type { Condition } from "@buildproof/prerequisites";
import { z } from "zod";
import type { CapacityAmount } from "../builds/capacity-amount";
import { type ContentOf, ruleContent } from "./part-content";

/* A rule as it is put together on its form: figures are text, and every line must be finished. */

const figure = (sentence: string) =>
  z
    .string(sentence)
    .trim()
    .transform((typed) => typed.replace(/[\s,](?=\d{3}(\D|$))/g, ""))
    .refine((typed) => /^-?\d+(\.\d+)?$/.test(typed), sentence)
    .transform(Number);

const MOST_NESTED = 6;

function conditionTo(depth: number): z.ZodType<Condition> {
  const item = z.strictObject({
    item: z.string().min(1, "Choose an item for each line, or take the line away."),
  });
  const fact = z.strictObject({
    fact: z.string().min(1, "Choose what the vehicle must have, or take the line away."),
    atLeast: figure("Say how much is needed at least, as a number."),
  });
  if (depth === 0) return z.union([item, fact]);
  const inner = z.lazy(() => conditionTo(depth - 1));
  const lines = z.array(inner).min(1, "A list needs a line. Add one, or take the list away.");
  return z.unknown().transform((value, context): Condition => {
    const schema = shapeOf(value, { item, fact, lines, inner });
    const parsed = schema.safeParse(value);
    if (parsed.success) return parsed.data as Condition; // Each of the shapes is a condition.
    for (const issue of parsed.error.issues) context.addIssue({ ...issue, code: "custom", path: [] });
    return z.NEVER;
  });
}

/** By the one key it has, so that a fault is named for that kind of line and not for all of them at once. */
function shapeOf(
  value: unknown,
  { item, fact, lines, inner }: { item: z.ZodType; fact: z.ZodType; lines: z.ZodType; inner: z.ZodType },
): z.ZodType {
  const has = (key: string) => typeof value === "object" && value !== null && key in value;
  if (has("all")) return z.strictObject({ all: lines });
  if (has("any")) return z.strictObject({ any: lines });
  if (has("not")) return z.strictObject({ not: inner });
  return has("fact") ? fact : item;
}

const typedCondition = conditionTo(MOST_NESTED);

const typedAmount = z.strictObject({
  item: z.string().min(1, "Choose an item for each line of the table, or take the line away."),
  side: z.enum(["supply", "demand"]),
  amount: figure("Write the amount of each line as a number."),
  /** It takes the place of the standard part, whose figure the vehicle's own is. */
  replaces: z.boolean(),
});

const head = {
  because: z.string().trim().min(1, "Say why, so that a customer understands it.").max(1_000),
  source: z.string().trim().min(1, "Say where it is from, or “common practice, no source”.").max(300),
  safety: z.boolean(),
  models: z.array(z.string()),
};

const conditional = <Kind extends "needs" | "excludes">(kind: Kind) =>
  z.strictObject({
    kind: z.literal(kind),
    when: typedCondition.nullable(),
    what: typedCondition,
    ...head,
  });

export const typedRule = z.discriminatedUnion(
  "kind",
  [
    conditional("needs"),
    conditional("excludes"),
    z.strictObject({
      kind: z.literal("capacity"),
      quantity: z.string().trim().min(1, "Name the quantity, such as fuel at 6,000 rpm."),
      unit: z.string().trim().max(20),
      link: z.string().min(1, "Choose the link of the chain that it is drawn on."),
      baseFact: z.string().min(1, "Choose what the vehicle itself gives."),
      reservePct: figure("The reserve is a number of per cent, 0 or more.").refine(
        (value) => value >= 0 && value <= 100,
        "A reserve is between 0 and 100 %.",
      ),
      amounts: z.array(typedAmount),
      ...head,
    }),
  ],
  "Choose what the rule says: needs, cannot have, or a limit.",
);

/** The rule as the catalogue keeps it. */
export function ruleFromTyped(typed: z.output<typeof typedRule>): ContentOf<"rule"> {
  if (typed.kind === "capacity") {
    const { amounts, ...rest } = typed;
    const side = (wanted: "supply" | "demand") =>
      Object.fromEntries(
        amounts
          .filter((each) => each.side === wanted)
          .map(({ item, amount, replaces }): [string, CapacityAmount] => [
            item,
            replaces ? { whole: amount, lessFact: typed.baseFact } : amount,
          ]),
      );
    return ruleContent.parse({ ...rest, supply: side("supply"), demand: side("demand"), position: 0 });
  }
  const { what, ...rest } = typed;
  // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
  return ruleContent.parse({ ...rest, then: what, position: 0 });
}
