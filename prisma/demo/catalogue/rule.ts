import {
  type CapacityRule,
  type Condition,
  commonPractice,
  type ExcludesRule,
  type ModelId,
  type NeedsRule,
} from "./types";

interface Extra {
  readonly safety?: boolean;
  /** Where it is law; otherwise it is common practice. */
  readonly source?: string;
}

export function needs(
  id: string,
  models: readonly ModelId[],
  when: Condition,
  then: Condition,
  because: string,
  extra: Extra = {},
): NeedsRule {
  return {
    id,
    kind: "needs",
    models,
    when,
    then,
    because,
    source: extra.source ?? commonPractice,
    safety: extra.safety ?? false,
  };
}

export function excludes(
  id: string,
  models: readonly ModelId[],
  when: Condition | null,
  then: Condition,
  because: string,
  extra: Extra = {},
): ExcludesRule {
  return {
    id,
    kind: "excludes",
    models,
    ...(when === null ? {} : { when }),
    then,
    because,
    source: extra.source ?? commonPractice,
    safety: extra.safety ?? false,
  };
}

export function capacity(rule: Omit<CapacityRule, "kind" | "source" | "safety"> & Extra): CapacityRule {
  return { kind: "capacity", source: commonPractice, safety: false, ...rule };
}
