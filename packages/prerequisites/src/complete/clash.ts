import { withItems } from "../model/situation";
import { idsOf, type Problem } from "./problem";
import { propagate } from "./propagate";
import type { Search } from "./search-program";
import { coreOf, type Member, someSelection } from "./some-selection";

/** Chosen items, groups and rules that cannot hold together, facts and barred items given. */
export type Clash = {
  readonly chosen: readonly string[];
  readonly groups: readonly string[];
  readonly rules: readonly string[];
};

type Impossible = Pick<Problem, "ready" | "bare" | "encoding" | "measures" | "chosen" | "barred" | "given">;

/**
 * Of a problem known to be impossible, a clash from which nothing can be left out. Members are left out
 * in ever smaller batches, at last one by one, and stay only where the rest is possible without them.
 * Null when the time is up before that is certain.
 */
export async function clashIn(problem: Impossible, search: Search): Promise<Clash | null> {
  let members = await clashingMembers(problem, search);
  if (!members) return null;
  for (let batch = Math.ceil(members.length / 2); batch > 0; batch = batch > 1 ? Math.ceil(batch / 2) : 0) {
    for (let from = 0; from < members.length; ) {
      const rest: readonly Member[] = members.toSpliced(from, batch);
      const selection = await someSelection(problem, rest, search);
      if (selection.status === "time-limit") return null;
      if (selection.status === "possible") from += batch;
      else members = selection.core ?? rest;
    }
  }
  return clashOf(problem, members);
}

/**
 * Enough members to clash: from propagation alone, or by taking in groups and rules only as selections
 * that satisfy those before break them.
 */
async function clashingMembers(problem: Impossible, search: Search): Promise<readonly Member[] | null> {
  const { ready, bare, encoding } = problem;
  const members = problem.chosen.map((literal): Member => ({ chosen: literal }));
  const { conflict } = propagate(encoding, [...problem.chosen, ...problem.barred]);
  if (conflict) {
    const constraints = ready.constraints.slice(0, problem.given).map((_, origin): Member => ({ origin }));
    return coreOf([...members, ...constraints], conflict);
  }
  for (;;) {
    const selection = await someSelection(problem, members, search);
    if (selection.status === "time-limit") return null;
    if (selection.status === "impossible") return selection.core ?? members;
    const situation = withItems(bare, idsOf(problem, selection.items));
    const before = members.length;
    ready.constraints.forEach(({ findingIn }, origin) => {
      if (findingIn(situation)) members.push({ origin });
    });
    if (members.length === before) throw new Error("What was found impossible has a selection after all.");
  }
}

function clashOf(problem: Impossible, members: readonly Member[]): Clash {
  const { ready, chosen } = problem;
  const groups = ready.model.groups?.length ?? 0;
  const inClash = new Set(members.flatMap((member) => ("chosen" in member ? [member.chosen] : [])));
  const origins = new Set(members.flatMap((member) => ("origin" in member ? [member.origin] : [])));
  const constraints = ready.constraints.map(({ id }, origin) => (origins.has(origin) ? [id] : []));
  return {
    chosen: idsOf(
      problem,
      chosen.filter((literal) => inClash.has(literal)).map((literal) => literal - 1),
    ),
    groups: constraints.slice(0, groups).flat(),
    rules: constraints.slice(groups).flat(),
  };
}
