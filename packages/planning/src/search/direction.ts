import type { Problem } from "../model/problem";
import { Decoder } from "../schedule/decoder";
import type { Schedule } from "./schedule";

/** More than any objective, for each task that a schedule does not place as it must be. */
const MISFIT = 2 ** 46;
const LARGEST_KEY = 2 ** 52;

/** One way through time: the problem as it is, or its mirror, with what makes schedules of it. */
export class Direction {
  readonly decoder: Decoder;
  readonly #rank: Float64Array;
  readonly #packed: Float64Array;
  readonly #list: Int32Array;

  constructor(
    readonly problem: Problem,
    /** What a schedule costs whose ends are these. */
    readonly costOf: (end: Float64Array) => number,
  ) {
    const { size, order } = problem;
    this.decoder = new Decoder(problem);
    this.#rank = new Float64Array(size);
    for (const [at, task] of order.entries()) this.#rank[task] = at;
    this.#packed = new Float64Array(size);
    this.#list = new Int32Array(size);
  }

  /** Tasks by descending key, those of one key with predecessors first. The array is used again. */
  listBy(key: Float64Array): Int32Array {
    const { size, order } = this.problem;
    const packed = this.#packed;
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let task = 0; task < size; task += 1) {
      // What found no place has no end; it goes with the last. In range, like all below.
      if (!Number.isFinite(key[task] as number)) continue;
      least = Math.min(least, key[task] as number);
      most = Math.max(most, key[task] as number);
    }
    // Numbers sort many times faster than pairs, so key and rank share one; keys too far apart for that lose grain.
    const grain = Math.max(1, ((most - least) * size) / LARGEST_KEY);
    for (let task = 0; task < size; task += 1) {
      const behind = Number.isFinite(key[task] as number) ? (most - (key[task] as number)) / grain : 0;
      packed[task] = Math.round(behind) * size + (this.#rank[task] as number);
    }
    packed.sort();
    for (let at = 0; at < size; at += 1) {
      this.#list[at] = order[(packed[at] as number) % size] as number;
    }
    return this.#list;
  }

  /** The schedule of a list. */
  decode(list: ArrayLike<number>): Schedule {
    this.decoder.decode(list);
    return this.keep();
  }

  /** What the decoder made last. */
  keep(): Schedule {
    const { start, end, misfits } = this.decoder;
    let sumOfEnds = 0;
    let hash = 0;
    for (let task = 0; task < start.length; task += 1) {
      sumOfEnds += end[task] as number;
      hash = (Math.imul(hash, 31) + (start[task] as number)) | 0;
    }
    const cost = misfits > 0 ? misfits * MISFIT : this.costOf(end);
    return { start: start.slice(), end: end.slice(), cost, sumOfEnds, hash };
  }
}

export function isMisfit({ cost }: Schedule): boolean {
  return cost >= MISFIT;
}
