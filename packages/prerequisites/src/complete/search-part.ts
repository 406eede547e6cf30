import type { Literal } from "./encoding";
import type { Measures } from "./measures";
import { type PartQuestion, partProgram } from "./part-program";
import type { Component } from "./residue";
import type { Search, SearchAnswer } from "./search-program";
import { settleSmallPart } from "./settle-small-part";

/** Parts with more clauses and sums than this are given to the solver bit by bit. */
const LARGE = 600;

/**
 * The best of one part, `found` as item indices. Of a large part the solver first sees only the rules that
 * adding nothing breaks, then those too that its answers break. A best answer that breaks none is the
 * best of all, for fewer rules never make anything dearer. `least` bounds the first level, a lead time
 * counted from the floor.
 */
export async function searchPart(
  part: Component,
  items: number,
  measures: Measures,
  question: PartQuestion,
  search: Search,
): Promise<SearchAnswer> {
  const settled = settleSmallPart(part, items, measures, question);
  if (settled) {
    const inItems = settled.found?.filter((variable) => variable <= items) ?? null;
    return { status: "proven", found: inItems?.map((variable) => variable - 1) ?? null, least: 0n };
  }
  const isLarge = part.clauses.length + part.sums.length > LARGE;
  let seen = isLarge ? brokenBy(part, new Set()) : part;
  let least = 0n;
  for (;;) {
    const { program, variableAt, isFirstLevelFirst } = partProgram(seen, items, measures, question);
    const answer = await search(program);
    if (isFirstLevelFirst && answer.least > least) least = answer.least;
    const variables = answer.found?.map(variableAt) ?? null;
    const found = variables?.filter((variable) => variable <= items).map((variable) => variable - 1) ?? null;
    if (!isLarge || !variables) return { ...answer, found, least };
    const broken = brokenBy(part, new Set(variables));
    if (broken.variables.length === 0) return { ...answer, found, least };
    if (answer.status === "stopped") return { status: "stopped", found: null, least };
    seen = together(part, seen, broken);
  }
}

/** What does not hold when just these variables are true. */
function brokenBy(part: Component, on: ReadonlySet<number>): Component {
  const holds = (literal: Literal): boolean => on.has(Math.abs(literal)) === literal > 0;
  const clauses = part.clauses.filter(({ literals }) => !literals.some(holds));
  const sums = part.sums.filter(({ terms, least }) => {
    let sum = 0n;
    for (const { literal, weight } of terms) if (holds(literal)) sum += weight;
    return sum < least;
  });
  return withVariables(part, clauses, sums);
}

function together(part: Component, a: Component, b: Component): Component {
  const clauses = new Set([...a.clauses, ...b.clauses]);
  const sums = new Set([...a.sums, ...b.sums]);
  return withVariables(part, [...clauses], [...sums]);
}

function withVariables(part: Component, clauses: Component["clauses"], sums: Component["sums"]): Component {
  const used = new Set<number>();
  for (const { literals } of clauses) for (const literal of literals) used.add(Math.abs(literal));
  for (const { terms } of sums) for (const { literal } of terms) used.add(Math.abs(literal));
  return { variables: part.variables.filter((variable) => used.has(variable)), clauses, sums };
}
