import type { Literal, Term } from "../complete/encoding";

export type BinarySum = {
  /** Lowest bit first. */
  readonly bits: readonly Literal[];
  readonly clauses: readonly (readonly Literal[])[];
  /** The highest variable now in use. */
  readonly variables: number;
};

/** Σ weight of the true literals as a binary number, by columns of full and half adders. */
export function binarySum(terms: readonly Term[], variables: number): BinarySum {
  const clauses: (readonly Literal[])[] = [];
  let last = variables;
  const columns: Literal[][] = [];
  const put = (at: number, literal: Literal): void => {
    columns[at] ??= [];
    columns[at].push(literal);
  };
  for (const { literal, weight } of terms) {
    for (let at = 0, left = weight; left > 0n; at += 1, left >>= 1n) if (left & 1n) put(at, literal);
  }
  const gate = (inputs: readonly Literal[], output: (ones: number) => boolean): Literal => {
    last += 1;
    clauses.push(...gateClauses(inputs, last, output));
    return last;
  };
  const bits: Literal[] = [];
  for (let at = 0; at < columns.length; at += 1) {
    const column = columns[at] ?? [];
    while (column.length > 1) {
      const inputs = column.splice(0, 3);
      put(
        at + 1,
        gate(inputs, (ones) => ones >= 2),
      );
      column.push(gate(inputs, (ones) => ones % 2 === 1));
    }
    bits.push(column[0] ?? gate([], () => false));
  }
  return { bits, clauses, variables: last };
}

/** For each row of the truth table: these inputs, so this output. */
function gateClauses(
  inputs: readonly Literal[],
  out: Literal,
  output: (ones: number) => boolean,
): readonly (readonly Literal[])[] {
  return Array.from({ length: 2 ** inputs.length }, (_, row) => {
    const isOne = (at: number): boolean => ((row >> at) & 1) === 1;
    const ones = inputs.filter((_input, at) => isOne(at)).length;
    return [...inputs.map((input, at) => (isOne(at) ? -input : input)), output(ones) ? out : -out];
  });
}
