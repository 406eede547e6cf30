import { z } from "zod";
import { storedAmounts, storedCondition, storedPromise } from "../builds/stored-catalogue";

/*
 * What can be said about each part of the catalogue, without its code: the code is what a part stays itself by,
 * from version to version. Money is in minor units, as whole numbers.
 */

const codes = z.array(z.string());
const sentences = z.array(z.string());
const minor = z.number().int("An amount is in whole cents.").min(0, "An amount is not less than nothing.");
const position = z.number().int().min(0);
const rate = z.enum(["workshop", "dyno"]);
const hours = z
  .string()
  .regex(/^\d{1,4}(\.\d{1,2})?$/, "Hours are a number such as 2.5, with at most two decimals.");

export const itemKinds = [
  "part",
  "kit",
  "consumable",
  "calibration",
  "operation",
  "bought-in",
  "fee",
  "duty",
] as const;

export const picks = ["at-most-one", "exactly-one", "at-least-one"] as const;

export const itemContent = z.strictObject({
  name: z.string().trim().min(1, "Give the item a name."),
  system: z.string(),
  kind: z.enum(itemKinds),
  component: z.string(),
  maker: z.string(),
  supplier: z.string(),
  note: z.string(),
  priceMinor: minor,
  costMinor: minor,
  leadDays: z.number().int().min(0, "Lead days are 0 or more."),
  massKg: z.number(),
  returnable: z.boolean(),
  oneUse: z.boolean(),
  warrantyMonths: z.number().int().min(0, "Warranty months are 0 or more."),
  serialised: z.boolean(),
  figures: z.record(z.string(), z.json()),
  fits: codes,
  operations: codes,
  position,
});

export const groupContent = z.strictObject({
  name: z.string().trim().min(1, "Give the group a name."),
  pick: z.enum(picks),
  items: codes,
  position,
});

const ruleHead = {
  because: z.string().trim().min(1, "Say why, so that a customer understands it."),
  source: z.string().trim().min(1, "Say where it is from, or “common practice, no source”."),
  safety: z.boolean(),
  models: codes,
  position,
};

/** Of a rule that is a condition: what makes it speak, and what it then asks for or forbids. */
function conditional<Kind extends "needs" | "excludes">(kind: Kind) {
  return z.strictObject({
    kind: z.literal(kind),
    when: storedCondition.nullable(),
    // biome-ignore lint/suspicious/noThenProperty: the condition language of the rules has this word.
    then: storedCondition,
    ...ruleHead,
  });
}

export const ruleContent = z.discriminatedUnion("kind", [
  conditional("needs"),
  conditional("excludes"),
  z.strictObject({
    kind: z.literal("capacity"),
    quantity: z.string().trim().min(1, "Name the quantity."),
    unit: z.string(),
    link: z.string(),
    baseFact: z.string(),
    supply: storedAmounts,
    demand: storedAmounts,
    reservePct: z.number().min(0).max(100, "A reserve is between 0 and 100 %."),
    ...ruleHead,
  }),
]);

export const packageContent = z.strictObject({
  name: z.string().trim().min(1, "Give the package a name."),
  outcome: z.string(),
  models: codes,
  items: codes,
  choices: z.array(z.strictObject({ name: z.string(), pick: z.enum(picks), items: codes })),
  options: codes,
  promise: storedPromise.nullable(),
  assumptions: sentences,
  exclusions: sentences,
  cautions: sentences,
  position,
});

export const operationContent = z.strictObject({
  name: z.string().trim().min(1, "Give the operation a name."),
  hours,
  rate,
  access: codes,
  place: z.string(),
  skill: z.string(),
  stage: z.string(),
  position,
});

export const accessContent = z.strictObject({
  name: z.string().trim().min(1, "Give the access work a name."),
  hours,
  rate,
  needs: codes,
});

/** Every part of the catalogue with the shape of what is said about it. */
export const partContent = {
  item: itemContent,
  group: groupContent,
  rule: ruleContent,
  package: packageContent,
  operation: operationContent,
  access: accessContent,
} as const;

export type PartKind = keyof typeof partContent;

export type ContentOf<Part extends PartKind> = z.output<(typeof partContent)[Part]>;

/** The whole catalogue by part and code. */
export type CatalogueParts = { readonly [Part in PartKind]: ReadonlyMap<string, ContentOf<Part>> };

/** What a change makes of one part: null before it was, null after it is gone. */
export type PartChange = {
  readonly [Part in PartKind]: {
    readonly part: Part;
    readonly code: string;
    readonly before: ContentOf<Part> | null;
    readonly after: ContentOf<Part> | null;
  };
}[PartKind];

export const partKinds = [
  "item",
  "group",
  "rule",
  "package",
  "operation",
  "access",
] as const satisfies readonly PartKind[];

export const partKind = z.enum(partKinds);

/** What a changed part is called: a rule by its reason. */
export function nameOfChange({ code, before, after }: PartChange): string {
  const content = after ?? before;
  if (!content) return code;
  return "name" in content ? content.name : content.because;
}
