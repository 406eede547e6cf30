import { readFileSync } from "node:fs";

export type ReferenceVector<Inputs, Expected> = {
  readonly id: string;
  readonly inputs: Inputs;
  readonly expected: Expected;
  readonly source: string;
  readonly status: "published" | "computed-from-published-formula" | "from-memory";
};

/** Vectors of one file in shared/reference. The file's shape is the test's claim; a wrong one fails it. */
export function referenceVectors<Inputs, Expected>(
  file: string,
): readonly ReferenceVector<Inputs, Expected>[] {
  const path = new URL(`../../shared/reference/${file}`, import.meta.url);
  const { vectors } = JSON.parse(readFileSync(path, "utf8")) as {
    vectors: readonly ReferenceVector<Inputs, Expected>[];
  };
  if (vectors.length === 0) throw new Error(`${file} holds no vectors.`);
  return vectors;
}

/** A measured quantity as the engineering vectors write it. */
export type Measured = { readonly value: number; readonly unit: string; readonly tolerance: number };
