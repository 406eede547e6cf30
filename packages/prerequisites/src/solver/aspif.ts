import type { Literal, Term } from "../complete/encoding";
import type { NarrowProgram } from "./narrow-sums";

/**
 * A program in the ground intermediate format of answer-set solvers, so that nothing is left to parse
 * or ground.
 *
 * @source Gebser, Kaminski, Kaufmann, Ostrowski, Schaub, Wanko, "Theory Solving Made Easy with Clingo 5",
 *         ICLP 2016 technical communications, appendix A (the format called aspif 1.0).
 */
export function aspifOf(program: NarrowProgram, shown: number): string {
  const { variables, clauses, sums, objectives } = program;
  const lines = ["asp 1 0 0"];
  const all = Array.from({ length: variables }, (_, at) => at + 1);
  if (variables > 0) lines.push(`1 1 ${variables} ${all.join(" ")} 0 0`);
  for (const literals of clauses) lines.push(forbidden(literals.map((literal) => -literal)));
  for (const { terms, least } of sums) lines.push(forbiddenSum(terms, least));
  objectives.forEach((terms, at) => {
    lines.push(`2 ${objectives.length - at} ${terms.length} ${weighed(terms, 1)}`.trimEnd());
  });
  for (let variable = 1; variable <= shown; variable += 1) {
    lines.push(`4 ${String(variable).length} ${variable} 1 ${variable}`);
  }
  lines.push("0", "");
  return lines.join("\n");
}

/** These do not hold together. */
function forbidden(literals: readonly Literal[]): string {
  return `1 0 0 0 ${[literals.length, ...literals].join(" ")}`;
}

/** Not: so much of the weight is lost that less than `least` is left. */
function forbiddenSum(terms: readonly Term[], least: bigint): string {
  const total = terms.reduce((sum, { weight }) => sum + weight, 0n);
  if (total < least) return forbidden([]);
  return `1 0 0 1 ${total - least + 1n} ${terms.length} ${weighed(terms, -1)}`.trimEnd();
}

function weighed(terms: readonly Term[], sign: 1 | -1): string {
  return terms.map(({ literal, weight }) => `${sign * literal} ${weight}`).join(" ");
}
