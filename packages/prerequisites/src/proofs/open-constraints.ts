import type { Literal, Term } from "../complete/encoding";

/** At least one literal is true; `id` stays the same while literals fall away. */
export type OpenClause = { readonly id: number; readonly literals: readonly Literal[] };

/** Σ weight of the true literals ≥ least, in numbers that are whole and exact. */
export type OpenSum = {
  readonly id: number;
  readonly terms: readonly { readonly literal: Literal; readonly weight: number }[];
  readonly least: number;
};

/** What is left to decide: every literal is open, every constraint could still be broken. */
export type OpenConstraints = {
  readonly variables: readonly number[];
  readonly clauses: readonly OpenClause[];
  readonly sums: readonly OpenSum[];
};

type Written = {
  readonly variables: readonly number[];
  readonly clauses: readonly (readonly Literal[])[];
  readonly sums: readonly { readonly terms: readonly Term[]; readonly least: bigint }[];
};

/** Null when a sum is too wide for exact numbers. */
export function openConstraints({ variables, clauses, sums }: Written): OpenConstraints | null {
  const open: OpenSum[] = [];
  for (const [at, { terms, least }] of sums.entries()) {
    const total = terms.reduce((all, { weight }) => all + weight, 0n);
    if (total > BigInt(Number.MAX_SAFE_INTEGER) || least < -BigInt(Number.MAX_SAFE_INTEGER)) return null;
    const divisor = terms.reduce((shared, { weight }) => greatestCommonDivisor(weight, shared), 0n) || 1n;
    open.push({
      id: clauses.length + at,
      terms: terms.map(({ literal, weight }) => ({ literal, weight: Number(weight / divisor) })),
      // More than everything together is as impossible as one more than that.
      least: Number(least > total ? total / divisor + 1n : ceilingOf(least, divisor)),
    });
  }
  return { variables, clauses: clauses.map((literals, id) => ({ id, literals })), sums: open };
}

function ceilingOf(dividend: bigint, divisor: bigint): bigint {
  const quotient = dividend / divisor;
  return dividend > quotient * divisor ? quotient + 1n : quotient;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}
