import type { Span } from "./plan-question";

/** Where a task may lie: it begins at the first open instant that does, and ends when its open time is done. */
export type Place = { start: number; end: number };

/** Open spans in order, apart from one another, with the open time before each. */
export class Calendar {
  readonly #from: Float64Array;
  readonly #to: Float64Array;
  /** Open time before each span; one more entry holds all of it. */
  readonly #before: Float64Array;

  constructor(readonly spans: readonly Span[]) {
    this.#from = Float64Array.from(spans, ([from]) => from);
    this.#to = Float64Array.from(spans, ([, to]) => to);
    this.#before = new Float64Array(spans.length + 1);
    for (const [at, [from, to]] of spans.entries()) {
      this.#before[at + 1] = (this.#before[at] ?? 0) + to - from;
    }
  }

  get longestSpan(): number {
    return Math.max(0, ...this.spans.map(([from, to]) => to - from));
  }

  get openTime(): number {
    return this.#before[this.spans.length] ?? 0;
  }

  /**
   * The earliest place at or after `from` for so much open time, written into `place`; false when the calendar runs out.
   * A task without duration needs an open instant.
   */
  earliest(from: number, duration: number, isSplittable: boolean, place: Place): boolean {
    let at = this.#spanEndingAfter(from);
    if (!isSplittable) {
      for (; at < this.spans.length; at += 1) {
        const start = Math.max(from, this.#from[at] ?? 0);
        if (start + duration <= (this.#to[at] ?? 0)) {
          place.start = start;
          place.end = start + duration;
          return true;
        }
      }
      return false;
    }
    if (at >= this.spans.length) return false;
    place.start = Math.max(from, this.#from[at] ?? 0);
    const done = this.openBefore(place.start) + duration;
    if (done > this.openTime) return false;
    place.end = duration === 0 ? place.start : this.#instantWith(done, at);
    return true;
  }

  /** Open time before an instant. */
  openBefore(instant: number): number {
    const at = this.#spanEndingAfter(instant);
    return (this.#before[at] ?? 0) + Math.max(0, instant - (this.#from[at] ?? Number.POSITIVE_INFINITY));
  }

  /** The first instant with so much open time before it, looked for from a span that begins no later. */
  #instantWith(openTime: number, from: number): number {
    let [low, high] = [from, this.spans.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#before[middle + 1] ?? 0) >= openTime) high = middle;
      else low = middle + 1;
    }
    return (this.#from[low] ?? 0) + openTime - (this.#before[low] ?? 0);
  }

  #spanEndingAfter(instant: number): number {
    let [low, high] = [0, this.spans.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#to[middle] ?? 0) > instant) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** The same seen backwards: an instant t lies at `horizon` − t. */
  mirrored(horizon: number): Calendar {
    return new Calendar(this.spans.map(([from, to]): Span => [horizon - to, horizon - from]).reverse());
  }
}
