import type { Literal } from "./encoding";
import type { Formula } from "./formula";

/**
 * Clauses that hold together exactly when the formula can hold. Where an alternative has several
 * parts, a fresh auxiliary stands for it, so that nesting never multiplies the clauses.
 */
export function clausesOf(formula: Formula, fresh: () => Literal): readonly (readonly Literal[])[] {
  if (formula === true) return [];
  if (formula === false) return [[]];
  if ("literal" in formula) return [[formula.literal]];
  if ("all" in formula) return formula.all.flatMap((part) => clausesOf(part, fresh));
  return alternatives(formula.any, fresh);
}

function alternatives(parts: readonly Formula[], fresh: () => Literal): readonly (readonly Literal[])[] {
  const common: Literal[] = [];
  const several: (readonly (readonly Literal[])[])[] = [];
  for (const clauses of parts.map((part) => clausesOf(part, fresh))) {
    const [only] = clauses;
    if (clauses.length === 1 && only) common.push(...only);
    else several.push(clauses);
  }
  const [alone] = several;
  if (alone && several.length === 1) return withoutTautologies(alone.map((clause) => [...common, ...clause]));
  const definitions: (readonly Literal[])[] = [];
  for (const clauses of several) {
    const stands = fresh();
    common.push(stands);
    definitions.push(...clauses.map((clause) => [-stands, ...clause]));
  }
  return withoutTautologies([common, ...definitions]);
}

function withoutTautologies(clauses: readonly (readonly Literal[])[]): readonly (readonly Literal[])[] {
  return clauses.flatMap((clause) => {
    // A set is worth its making only for a long clause.
    const all = clause.length > 16 ? new Set(clause) : null;
    const has = (literal: Literal): boolean => all?.has(literal) ?? clause.includes(literal);
    if (clause.some((literal) => has(-literal))) return [];
    return [all ? [...all] : clause.filter((literal, at) => clause.indexOf(literal) === at)];
  });
}
