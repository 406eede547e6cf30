import type { WrittenDecimal } from "@buildproof/units";
import type { Clash } from "../complete/clash";
import type { CapacityRule, Facts, Group, Model } from "../model/model";
import type { FactRanges } from "./fact-range";

/** A catalogue as one vehicle model sees it. */
export type CatalogueToProve = {
  readonly model: Model;
  readonly packages?: readonly PackageToProve[] | undefined;
  /** Limits that no rule of the model keeps by itself. */
  readonly limits?: readonly CapacityRule[] | undefined;
};

export type PackageToProve = {
  readonly id: string;
  readonly items: readonly string[];
  readonly choices?: readonly Group[] | undefined;
  readonly options?: readonly string[] | undefined;
};

/** The vehicles that a proof speaks of. */
export type VehiclesToProve = {
  readonly facts?: FactRanges | undefined;
  /** Items that do not fit. */
  readonly barred?: readonly string[] | undefined;
  /** Rules that a person may set aside: a build is sold without them when somebody answers for it. */
  readonly overridable?: readonly string[] | undefined;
};

/** Proven for all builds and vehicles asked about. A clash is null when time ran out before it was smallest. */
export type ProofFinding =
  | { readonly kind: "nothing-buildable"; readonly clash: Clash | null }
  | { readonly kind: "item-never"; readonly item: string; readonly clash: Clash | null }
  | {
      readonly kind: "package-never";
      readonly package: string;
      readonly notFitting: readonly string[];
      readonly clash: Clash | null;
    }
  | {
      readonly kind: "option-never";
      readonly package: string;
      readonly item: string;
      readonly clash: Clash | null;
    }
  /** It can be about to apply, but then another rule is broken. */
  | { readonly kind: "rule-contradicted"; readonly rule: string; readonly clash: Clash | null }
  | { readonly kind: "rule-never-applies"; readonly rule: string }
  /** No build that keeps the others breaks it; `by`: enough of them, empty when it cannot be broken at all. */
  | { readonly kind: "rule-always-kept"; readonly rule: string; readonly by: readonly string[] | null }
  | { readonly kind: "forces"; readonly by: Chooser; readonly items: readonly string[] }
  /** Only vehicles whose fact is at least, or below, the value. */
  | {
      readonly kind: "only-at-least";
      readonly by: Chooser;
      readonly fact: string;
      readonly value: WrittenDecimal;
    }
  | {
      readonly kind: "only-below";
      readonly by: Chooser;
      readonly fact: string;
      readonly value: WrittenDecimal;
    }
  | { readonly kind: "unsettled"; readonly question: UnsettledQuestion };

/** Whose choice it is; null: any build at all. */
export type Chooser = { readonly item: string } | { readonly package: string } | null;

export type UnsettledQuestion =
  | { readonly about: "buildable" }
  | { readonly about: "item" | "package" | "rule"; readonly id: string }
  | { readonly about: "option"; readonly id: string; readonly item: string }
  | { readonly about: "forces"; readonly by: Chooser };

/** A build, and what the vehicle has beyond the least that it may have. */
export type ExampleBuild = { readonly items: readonly string[]; readonly facts: Facts };

export type LimitProof = {
  readonly limit: string;
  /**
   * `kept-by-others`: what the other rules let through never exceeds it. `kept-by-itself`: it would, as the
   * example shows, and only the limit's own rule stops it. `set-aside`: that rule may be set aside, and then
   * the example is sold. `exceeded`: no rule stops the example.
   */
  readonly verdict: "kept-by-others" | "kept-by-itself" | "set-aside" | "exceeded" | "unsettled";
  /** Enough rules to keep it, when others do. */
  readonly by: readonly string[] | null;
  readonly example: (ExampleBuild & LimitUse) | null;
};

/** In the limit's own unit; `asked` has the reserve in it. */
export type LimitUse = { readonly asked: number; readonly supplied: number; readonly over: number };

export type BuildCount = {
  readonly package: string | null;
  /** Builds that keep every rule on some vehicle asked about, the package in them. */
  readonly isExact: boolean;
  readonly builds: bigint;
  /** Ways to take the package's choices and options that some build completes; null without any. */
  readonly ways: { readonly isExact: boolean; readonly count: bigint } | null;
};

export type CatalogueProof = {
  readonly findings: readonly ProofFinding[];
  readonly limits: readonly LimitProof[];
  readonly counts: readonly BuildCount[];
};
