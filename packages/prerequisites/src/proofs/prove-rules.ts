// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { conditionTest } from "../model/condition";
import type { Condition, Rule } from "../model/model";
import { situation } from "../model/situation";
import type { ProofFinding } from "./catalogue-proof";
import { oppositeRule } from "./opposite-rule";
import type { Answer, Prover } from "./prover";

/** Rules that never apply, that others contradict when they do, and that others keep anyhow. */
export async function proveRules(
  prover: Prover,
  known: readonly ProofFinding[],
): Promise<readonly ProofFinding[]> {
  const findings: ProofFinding[] = [];
  for (const [at, rule] of prover.rules.entries()) {
    const found = await proveRule(prover, rule, at);
    if (found && !isSaidAlready(found, known)) findings.push(found);
  }
  return findings;
}

async function proveRule(prover: Prover, rule: Rule, at: number): Promise<ProofFinding | null> {
  const unsettled: ProofFinding = { kind: "unsettled", question: { about: "rule", id: rule.id } };
  const others = prover.rules.toSpliced(at, 1);
  const when = rule.kind === "capacity" ? undefined : rule.when;
  if (when) {
    const applies = await canApply(prover, when, prover.rules);
    if (applies.status === "unsettled") return unsettled;
    if (applies.status === "impossible") {
      const alone = await canApply(prover, when, others);
      if (alone.status === "unsettled") return unsettled;
      if (alone.status === "impossible") return { kind: "rule-never-applies", rule: rule.id };
      const clash = await prover.clash({ rules: [...prover.rules, applied(prover, when)] });
      const own = applied(prover, when).id;
      const rules = clash?.rules.filter((id) => id !== own) ?? [];
      return { kind: "rule-contradicted", rule: rule.id, clash: clash && { ...clash, rules } };
    }
  }
  const broken = { rules: prover.rules.with(at, oppositeRule(rule)) };
  const { status } = await prover.ask(broken);
  if (status === "unsettled") return unsettled;
  if (status === "possible") return null;
  return { kind: "rule-always-kept", rule: rule.id, by: await keepersOf(prover, broken, rule.id) };
}

/** Of what makes it impossible to break a rule: the others. */
export async function keepersOf(
  prover: Prover,
  broken: { readonly rules: readonly Rule[] },
  rule: string,
): Promise<readonly string[] | null> {
  const clash = await prover.clash(broken);
  return clash && [...clash.groups, ...clash.rules].filter((id) => id !== rule);
}

async function canApply(prover: Prover, when: Condition, rules: readonly Rule[]): Promise<Answer> {
  const holds = conditionTest(when);
  // Steps are asked for as items, so the facts left to a condition are those that do not vary.
  const found = prover.builds.find(({ selected }) => holds(situation(selected, prover.spread.facts)));
  if (found) return { status: "possible", witness: found };
  return prover.ask({ rules: [...rules, applied(prover, when)] });
}

/** A rule that holds where another one applies. */
function applied(prover: Prover, when: Condition): Rule {
  const ids = new Set([...prover.rules, ...(prover.spread.model.groups ?? [])].map(({ id }) => id));
  let id = "applies";
  while (ids.has(id)) id = ` ${id}`;
  return { id, kind: "needs", then: when };
}

/** A rule about an item that can never be chosen is contradicted for the reason already given. */
function isSaidAlready(finding: ProofFinding, known: readonly ProofFinding[]): boolean {
  if (finding.kind !== "rule-contradicted" || !finding.clash) return false;
  const here = new Set([...finding.clash.groups, ...finding.clash.rules]);
  return known.some(
    (other) =>
      other.kind === "item-never" &&
      other.clash !== null &&
      [...other.clash.groups, ...other.clash.rules].every((id) => here.has(id)),
  );
}
