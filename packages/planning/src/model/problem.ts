import type { Calendar } from "./calendar";
import type { Objective } from "./plan-question";

/** Rows of different length in one array: row i is `item[start[i]]` up to `item[start[i + 1]]`. */
export type Rows = { readonly start: Int32Array; readonly item: Int32Array; readonly amount: Float64Array };

/** A hold in indices, with what the search asks of it. */
export type PreparedHold = {
  readonly resource: number;
  readonly units: number;
  readonly from: number;
  readonly to: number;
  /** Tasks that work with the held units, and how many each uses. */
  readonly users: readonly {
    readonly task: number;
    readonly units: number;
    readonly isCountedHere: boolean;
  }[];
  /** How long it lasts at least, whatever else is booked. */
  readonly leastLength: number;
};

/** Tasks that holds tie together: they are placed as one. */
export type Cluster = { readonly tasks: readonly number[]; readonly holds: readonly PreparedHold[] };

/**
 * A question in indices and arrays, as the search reads it. Tasks are numbered as they were given; `order` lists them
 * with predecessors first.
 */
export type Problem = {
  readonly size: number;
  readonly order: readonly number[];
  readonly duration: Float64Array;
  readonly release: Float64Array;
  /** Infinite where there is none. */
  readonly due: Float64Array;
  readonly weight: Float64Array;
  readonly isSplittable: readonly boolean[];
  /** Hours that the task's resources share; null where it may run at any time. */
  readonly calendar: readonly (Calendar | null)[];
  /** Resources and units. */
  readonly uses: Rows;
  /** Predecessors and lags. */
  readonly before: Rows;
  /** Successors and lags. */
  readonly after: Rows;
  readonly capacity: readonly number[];
  /** Opening hours of each resource; null where it is always open. */
  readonly hours: readonly (Calendar | null)[];
  /** Start of a settled task; NaN where it is free. */
  readonly fixed: Float64Array;
  /** End that settled successors allow; infinite without them. */
  readonly latestEnd: Float64Array;
  readonly clusters: readonly Cluster[];
  /** Index of the task's cluster, or -1. */
  readonly clusterOf: Int32Array;
  readonly objective: Objective;
};
