import type { Literal, Term } from "../complete/encoding";
import type { SearchProgram } from "../complete/search-program";
import { binarySum } from "./binary-sum";

/** Sums as the solver can hold them: every weight, and all of them together, within 31 bits. */
export type NarrowProgram = {
  readonly variables: number;
  readonly clauses: readonly (readonly Literal[])[];
  readonly sums: SearchProgram["sums"];
  readonly objectives: readonly (readonly Term[])[];
  /** What the first objective was divided by; null when it became several. */
  readonly firstDivisor: bigint | null;
};

const LARGEST = 2n ** 31n - 2n;
const BITS_PER_LEVEL = 30;

/**
 * Divides sums by what their weights share. One that is still too wide is added up in binary by
 * clauses, exactly: nothing is rounded to make it fit.
 */
export function narrowSums(program: SearchProgram): NarrowProgram {
  const clauses = [...program.clauses];
  const sums: { terms: readonly Term[]; least: bigint }[] = [];
  const objectives: (readonly Term[])[] = [];
  let variables = program.variables;
  const bitsOf = (terms: readonly Term[]): readonly Literal[] => {
    const sum = binarySum(terms, variables);
    variables = sum.variables;
    for (const clause of sum.clauses) clauses.push(clause);
    return sum.bits;
  };
  for (const sum of program.sums) {
    const { terms, least } = divided(sum.terms, sum.least);
    if (least <= 0n) continue;
    if (isNarrow(terms)) sums.push({ terms, least });
    else for (const clause of atLeast(bitsOf(terms), least)) clauses.push(clause);
  }
  let firstDivisor: bigint | null = null;
  for (const objective of program.objectives) {
    const { terms, divisor } = divided(objective, 0n);
    if (isNarrow(terms)) {
      if (objectives.length === 0) firstDivisor = divisor;
      objectives.push(terms);
    } else objectives.push(...bitLevels(bitsOf(terms)));
  }
  return { variables, clauses, sums, objectives, firstDivisor };
}

function divided(terms: readonly Term[], least: bigint) {
  const divisor = terms.reduce((shared, { weight }) => greatestCommonDivisor(weight, shared), 0n);
  if (divisor <= 1n) return { terms, least, divisor: 1n };
  return {
    terms: terms.map(({ literal, weight }) => ({ literal, weight: weight / divisor })),
    least: (least + divisor - 1n) / divisor,
    divisor,
  };
}

function isNarrow(terms: readonly Term[]): boolean {
  return terms.reduce((sum, { weight }) => sum + weight, 0n) <= LARGEST;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommonDivisor(b, a % b);
}

/** A binary number (lowest bit first) ≥ least: where least has a 1 and the number a 0, a higher bit decided. */
function atLeast(bits: readonly Literal[], least: bigint): readonly (readonly Literal[])[] {
  if (least >> BigInt(bits.length) > 0n) return [[]];
  const isSet = (at: number): boolean => ((least >> BigInt(at)) & 1n) === 1n;
  return bits.flatMap((bit, at) => {
    if (!isSet(at)) return [];
    return [[bit, ...bits.filter((_, higher) => higher > at && !isSet(higher))]];
  });
}

/** The highest bits first, a level at a time. */
function bitLevels(bits: readonly Literal[]): readonly (readonly Term[])[] {
  const levels: Term[][] = [];
  for (let from = 0; from < bits.length; from += BITS_PER_LEVEL) {
    const chunk = bits.slice(from, from + BITS_PER_LEVEL);
    levels.unshift(chunk.map((literal, at) => ({ literal, weight: 2n ** BigInt(at) })));
  }
  return levels;
}
