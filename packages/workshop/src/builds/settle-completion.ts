import {
  type Completion,
  checkPrerequisites,
  completePrerequisites,
  type Measure,
  type Rule,
  type Search,
} from "@buildproof/prerequisites";
import { changesPower } from "../engineering/changes-power";
import type { CompletionBuild } from "./completion-build";
import { isWork, solvableModel } from "./solvable-model";

export type Settled = {
  readonly status: Completion["status"];
  /** Items to add; null when there is nothing that completes the choice, or none was found in time. */
  readonly add: readonly string[] | null;
  /** No completion is better, and that is proven. */
  readonly isProven: boolean;
  readonly clash: Completion["clash"];
  /** What a forecast spoke against: the rule by which the clash names it → the rule of the catalogue. */
  readonly forecastRules: ReadonlyMap<string, string>;
};

/** Each round rules out one set of parts that change power; a catalogue has few of them. */
const MOST_ROUNDS = 12;

/**
 * The best completion of a choice, judged by the forecast that it would itself make. The search judges by the torque
 * of today's choice; parts whose own forecast breaks a rule are ruled out, and the search asked again.
 */
export async function settleCompletion(
  build: CompletionBuild,
  minimise: Measure,
  search: Search,
): Promise<Settled> {
  const { catalogue, site, modelCode, chosen, barred, leaveOpen } = build;
  const facts = build.factsWith(chosen);
  const base = solvableModel(catalogue, site, modelCode, facts);
  const ruledOut: Rule[] = [];
  const forecastRules = new Map<string, string>();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const rules = [...(base.rules ?? []).filter(({ id }) => !leaveOpen.has(id)), ...ruledOut];
    const groups = (base.groups ?? []).filter(({ id }) => !leaveOpen.has(id));
    const model = { ...base, groups, rules };
    const completion = await completePrerequisites({ model, chosen, barred, facts, minimise }, search);
    const { status, clash } = completion;
    if (completion.total === null) return { status, add: null, isProven: false, clash, forecastRules };
    const add = completion.add.filter((id) => !isWork(id));
    const codes = [...chosen, ...add];
    const broken = brokenByForecast(build, codes);
    // What was ruled out was judged part by part, so a later answer is the best found and not a proof.
    const isProven = status === "optimal" && round === 0;
    if (broken === null) return { status, add, isProven, clash, forecastRules };
    const rule = withoutThesePowerParts(build, codes, broken, `forecast ${round}`);
    ruledOut.push(rule);
    forecastRules.set(rule.id, broken);
  }
  const clash = { chosen: [], groups: [], rules: [] };
  return { status: "time-limit", add: null, isProven: false, clash, forecastRules };
}

/** The first rule that a selection breaks by the torque of its own forecast; null when it breaks none. */
function brokenByForecast(build: CompletionBuild, codes: readonly string[]): string | null {
  const { catalogue, site, modelCode, leaveOpen } = build;
  const facts = build.factsWith(codes);
  const { rules = [], ...rest } = solvableModel(catalogue, site, modelCode, facts);
  const without = { ...rest, rules: rules.filter(({ id }) => !id.includes(" → ")) };
  const { findings } = checkPrerequisites(without, codes, facts);
  return findings.find(({ rule }) => !leaveOpen.has(rule))?.rule ?? null;
}

/**
 * Rules out the parts that make the torque which breaks a rule: those without which it would hold, unless one is added
 * with which it would hold again.
 */
function withoutThesePowerParts(
  build: CompletionBuild,
  codes: readonly string[],
  broken: string,
  id: string,
): Rule {
  const breaks = (selected: readonly string[]) => brokenByForecast(build, selected) === broken;
  const powerful = build.catalogue.items.filter(changesPower).map(({ code }) => code);
  let cause = codes.filter((code) => powerful.includes(code));
  const others = codes.filter((code) => !powerful.includes(code));
  for (const code of cause) {
    const rest = cause.filter((each) => each !== code);
    if (breaks([...others, ...rest])) cause = rest;
  }
  const relief = powerful.filter(
    (code) => !codes.includes(code) && !build.barred.includes(code) && !breaks([...codes, code]),
  );
  const then = {
    not: {
      all: [...cause.map((item) => ({ item })), ...relief.map((item) => ({ not: { item } }))],
    },
  };
  return { id, kind: "needs", then };
}
