import { readFileSync } from "node:fs";

export type ReferenceVector<Inputs, Expected> = {
  readonly id: string;
  readonly inputs: Inputs;
  readonly expected: Expected;
  readonly source: string;
  readonly status: "published" | "computed-from-published-formula" | "from-memory";
};

/** Ids of each file that no check has asked for its expectation yet. */
const unasked = new Map<string, Set<string>>();

/**
 * Vectors of one file in shared/reference. The file's shape is the test's claim; a wrong one fails it. Looking at what a
 * vector expects counts as a check of it.
 */
export function referenceVectors<Inputs, Expected>(
  file: string,
): readonly ReferenceVector<Inputs, Expected>[] {
  const path = new URL(`../../shared/reference/${file}`, import.meta.url);
  const { vectors } = JSON.parse(readFileSync(path, "utf8")) as {
    vectors: readonly ReferenceVector<Inputs, Expected>[];
  };
  if (vectors.length === 0) throw new Error(`${file} holds no vectors.`);
  const waiting = unasked.get(file) ?? new Set(vectors.map(({ id }) => id));
  unasked.set(file, waiting);
  return vectors.map((vector) => ({
    ...vector,
    get expected() {
      waiting.delete(vector.id);
      return vector.expected;
    },
  }));
}

/** To be asked at the end of the file that checks the vectors: ids of those that nothing there has checked. */
export function unusedVectors(file: string): readonly string[] {
  const waiting = unasked.get(file);
  if (!waiting) throw new Error(`Nothing has read ${file}.`);
  return [...waiting];
}

/** A measured quantity as the engineering vectors write it. */
export type Measured = { readonly value: number; readonly unit: string; readonly tolerance: number };
