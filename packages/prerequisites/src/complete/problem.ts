import type { PreparedModel } from "../model/prepare";
import type { Situation } from "../model/situation";
import type { Encoding, Literal } from "./encoding";
import type { Measures } from "./measures";

/** A question made ready: the catalogue on one vehicle, what stays in and what stays out. */
export type Problem = {
  readonly ready: PreparedModel;
  /** Nothing selected, on this vehicle. */
  readonly bare: Situation;
  readonly encoding: Encoding;
  readonly measures: Measures;
  readonly chosen: readonly Literal[];
  /** As literals that say "not". */
  readonly barred: readonly Literal[];
};

export function idsOf({ ready }: Problem, indices: readonly number[]): readonly string[] {
  return indices.map((index) => ready.model.items[index]?.id ?? "");
}
