import type { WrittenDecimal } from "@buildproof/units";

/** A part, kit, operation or fee that can be chosen. Absent figures are 0. */
export type Item = {
  readonly id: string;
  /** In any one unit of money; the build sheet uses minor units. */
  readonly price?: WrittenDecimal | undefined;
  readonly hours?: WrittenDecimal | undefined;
  readonly leadDays?: WrittenDecimal | undefined;
};

export type GroupPick = "at-most-one" | "exactly-one" | "at-least-one";

export type Group = { readonly id: string; readonly pick: GroupPick; readonly items: readonly string[] };

export type Condition =
  | { readonly item: string }
  | { readonly fact: string; readonly atLeast: WrittenDecimal }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

/** When `when` holds (always, if absent), `then` must hold. */
export type NeedsRule = {
  readonly id: string;
  readonly kind: "needs";
  readonly when?: Condition | undefined;
  readonly then: Condition;
  readonly because?: string | undefined;
};

/** `when` and `then` must not hold together. */
export type ExcludesRule = Omit<NeedsRule, "kind"> & { readonly kind: "excludes" };

/** base + Σ supply of the selected ≥ (1 + reservePct/100) · Σ demand of the selected, exactly. */
export type CapacityRule = {
  readonly id: string;
  readonly kind: "capacity";
  readonly quantity?: string | undefined;
  readonly base?: WrittenDecimal | undefined;
  readonly supply?: Readonly<Record<string, WrittenDecimal>> | undefined;
  readonly demand?: Readonly<Record<string, WrittenDecimal>> | undefined;
  readonly reservePct?: WrittenDecimal | undefined;
  readonly because?: string | undefined;
};

export type Rule = NeedsRule | ExcludesRule | CapacityRule;

export type Model = {
  readonly items: readonly Item[];
  readonly groups?: readonly Group[] | undefined;
  readonly rules?: readonly Rule[] | undefined;
};

/** What the vehicle already has or is, by name. A missing fact is 0. */
export type Facts = Readonly<Record<string, WrittenDecimal>>;

export const NO_FACTS: Facts = {};
