import type { Search } from "../complete/search-program";
import { assume } from "./assume";
import { openConstraints } from "./open-constraints";
import { someModel } from "./some-model";

/** So many guesses take about as long as handing a program to the solver. */
const GUESSES = 200;

/**
 * A search that first tries by itself: most questions of a proof are so small that handing them over takes
 * longer than answering them. What is best is always left to the solver.
 */
export function shortLookFirst(search: Search, guesses = GUESSES): Search {
  return (program, share) => {
    const { variables, clauses, sums, objectives, shown } = program;
    const all = Array.from({ length: variables }, (_, at) => at + 1);
    const open = objectives.length === 0 ? openConstraints({ variables: all, clauses, sums }) : null;
    if (!open) return search(program, share);
    const first = assume(open, []);
    const rest = first && someModel(first.open, { left: guesses });
    if (rest === "unsettled") return search(program, share);
    const found = first && rest ? [...first.settled, ...rest] : null;
    const isShown = (literal: number): boolean => literal > 0 && literal <= shown;
    return Promise.resolve({ status: "proven", found: found?.filter(isShown) ?? null, least: 0n });
  };
}
