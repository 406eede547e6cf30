import type { Conflict } from "./conflict";
import type { Encoding, Literal } from "./encoding";
import type { Problem } from "./problem";
import { propagate } from "./propagate";
import { residue } from "./residue";
import { searchPart } from "./search-part";
import type { Search } from "./search-program";

/** A chosen item, or a group or rule by its origin. */
export type Member = { readonly chosen: Literal } | { readonly origin: number };

type SomeProblem = Pick<Problem, "encoding" | "measures" | "barred" | "given">;

export type Selection =
  /** Item indices of a selection in which all members hold. */
  | { readonly status: "possible"; readonly items: readonly number[] }
  /** The members that clash already, when propagation alone finds it. */
  | { readonly status: "impossible"; readonly core: readonly Member[] | null }
  | { readonly status: "time-limit" };

/** Some selection in which the members hold, barred items left out. */
export async function someSelection(
  problem: SomeProblem,
  members: readonly Member[],
  search: Search,
): Promise<Selection> {
  const encoding = only(problem, members);
  const chosen = members.flatMap((member) => ("chosen" in member ? [member.chosen] : []));
  const { values, conflict } = propagate(encoding, [...chosen, ...problem.barred]);
  if (conflict) return { status: "impossible", core: coreOf(members, conflict) };
  const items: number[] = [];
  for (let item = 1; item <= encoding.items; item += 1) if (values[item] === 1) items.push(item - 1);
  for (const part of residue(encoding, values)) {
    const question = { levels: [], leadFloor: 0n, leadCap: null };
    const { status, found } = await searchPart(part, encoding.items, problem.measures, question, search);
    if (status === "stopped") return { status: "time-limit" };
    if (!found) return { status: "impossible", core: null };
    items.push(...found);
  }
  return { status: "possible", items };
}

export function coreOf(members: readonly Member[], { origins, given }: Conflict): readonly Member[] {
  return members.filter((member) =>
    "chosen" in member ? given.has(member.chosen) : origins.has(member.origin),
  );
}

function only(
  { encoding, given = Number.POSITIVE_INFINITY }: SomeProblem,
  members: readonly Member[],
): Encoding {
  const origins = new Set(members.flatMap((member) => ("origin" in member ? [member.origin] : [])));
  const isIn = (origin: number): boolean => origins.has(origin) || origin >= given;
  return {
    ...encoding,
    clauses: encoding.clauses.filter(({ origin }) => isIn(origin)),
    sums: encoding.sums.filter(({ origin }) => isIn(origin)),
  };
}
