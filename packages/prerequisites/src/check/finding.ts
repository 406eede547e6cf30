/** One thing wrong with a selection. */
export type Finding = {
  /** The rule's id, or the group's. */
  readonly rule: string;
  readonly kind: "group" | "needs" | "excludes" | "capacity";
  /** Selected items that bring the rule about: named in `when`, making the demand, or in the group. */
  readonly items: readonly string[];
  readonly because: string;
  /** Capacity only: how much more supply is asked for, in the rule's own unit. */
  readonly shortBy?: number;
};

export type CheckResult = { readonly ok: boolean; readonly findings: readonly Finding[] };
