import { propagate } from "../complete/propagate";
import type { Chooser, ProofFinding } from "./catalogue-proof";
import type { Prover, Question } from "./prover";

/** What every build with a choice has beside it, and on which vehicles only it can be. */
export async function proveForced(
  prover: Prover,
  by: Chooser,
  chosen: Question,
): Promise<readonly ProofFinding[]> {
  const first = await prover.ask(chosen);
  if (first.status === "impossible") return [];
  const unsettled: ProofFinding = { kind: "unsettled", question: { about: "forces", by } };
  if (first.status === "unsettled") return [unsettled];
  const steps = new Set(prover.spread.steps.map(({ id }) => id));
  const given = new Set(chosen.chosen);
  const certain = followingAtOnce(prover, chosen);
  let open = [...first.witness.selected].filter((id) => !given.has(id) && !steps.has(id));
  const forced: string[] = [];
  for (let item = open.pop(); item !== undefined; item = open.pop()) {
    const without = certain.has(item)
      ? IMPOSSIBLE
      : await prover.ask({ ...chosen, left: [...(chosen.left ?? []), item] });
    if (without.status === "unsettled") return [unsettled];
    if (without.status === "impossible") forced.push(item);
    else open = open.filter((id) => without.witness.selected.has(id));
  }
  const isForced = new Set(forced);
  const items = prover.spread.model.items.map(({ id }) => id).filter((id) => isForced.has(id));
  const findings: ProofFinding[] = items.length > 0 ? [{ kind: "forces", by, items }] : [];
  await lookAtTheTop(prover, chosen);
  for (const fact of new Set(prover.spread.steps.map((step) => step.fact))) {
    const bound = await boundsOf(prover, by, chosen, fact);
    if (bound === "unsettled") return [...findings, unsettled];
    findings.push(...bound);
  }
  return findings;
}

const IMPOSSIBLE = { status: "impossible" } as const;

/** Where every fact may be at its highest at once, that one build answers for each of them. */
async function lookAtTheTop(prover: Prover, chosen: Question): Promise<void> {
  const highest = new Map(prover.spread.steps.map(({ fact, id }) => [fact, id]));
  await prover.ask({ ...chosen, chosen: [...(chosen.chosen ?? []), ...highest.values()] });
}

/** The lowest and the highest that a fact may be with a choice, where the range asked about is wider. */
async function boundsOf(
  prover: Prover,
  by: Chooser,
  chosen: Question,
  fact: string,
): Promise<readonly ProofFinding[] | "unsettled"> {
  const findings: ProofFinding[] = [];
  const steps = prover.spread.steps.filter((step) => step.fact === fact);
  for (let most = 0; most <= steps.length; most += 1) {
    const left = steps.slice(most).map(({ id }) => id);
    const { status } = await prover.ask({ ...chosen, left: [...(chosen.left ?? []), ...left] });
    if (status === "unsettled") return status;
    if (status === "impossible") continue;
    const value = steps[most - 1]?.value;
    if (value !== undefined) findings.push({ kind: "only-at-least", by, fact, value });
    break;
  }
  for (let least = steps.length - 1; least >= 0; least -= 1) {
    const step = steps[least];
    if (!step) break;
    const { status } = await prover.ask({ ...chosen, chosen: [...(chosen.chosen ?? []), step.id] });
    if (status === "unsettled") return status;
    if (status === "possible") {
      const above = steps[least + 1];
      if (above) findings.push({ kind: "only-below", by, fact, value: above.value });
      return findings;
    }
  }
  const lowest = steps[0];
  if (lowest) findings.push({ kind: "only-below", by, fact, value: lowest.value });
  return findings;
}

/** Items that need no question: they follow from the choice rule by rule. */
function followingAtOnce(prover: Prover, question: Question): ReadonlySet<string> {
  const barred = prover.literalsOf([...prover.barred, ...(question.left ?? [])]).map((literal) => -literal);
  const given = [...prover.literalsOf(question.chosen ?? []), ...barred];
  const { values } = propagate(prover.encodingOf(question), given);
  const ids = prover.spread.model.items.map(({ id }) => id);
  return new Set(ids.filter((_, index) => values[index + 1] === 1));
}
