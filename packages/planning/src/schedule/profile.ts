const FIRST_ROOM = 32;

/**
 * Free units of one resource over time, as a list of the instants at which they change. It grows with what is booked and
 * not with the length of time, so minutes cost no more than days.
 */
export class Profile {
  #times = new Float64Array(FIRST_ROOM);
  #free = new Float64Array(FIRST_ROOM);
  #size = 1;

  constructor(readonly capacity: number) {
    this.#times[0] = Number.NEGATIVE_INFINITY;
    this.#free[0] = capacity;
  }

  /** Takes over what another profile of the same resource holds. */
  copy(other: Profile): void {
    const size = other.#size;
    if (this.#times.length < size) this.#grow(size);
    if (size < 24) {
      for (let at = 0; at < size; at += 1) {
        this.#times[at] = other.#times[at] as number;
        this.#free[at] = other.#free[at] as number;
      }
    } else {
      this.#times.set(other.#times.subarray(0, size));
      this.#free.set(other.#free.subarray(0, size));
    }
    this.#size = size;
  }

  /** The earliest instant at or after `from` with so many units free for so long. */
  earliest(from: number, duration: number, units: number): number {
    const times = this.#times;
    const free = this.#free;
    const size = this.#size;
    let start = from;
    for (let at = this.#at(from); at < size && (times[at] as number) < start + duration; at += 1) {
      if ((free[at] as number) >= units) continue;
      // The last stretch never ends and has everything free, so there is one to go on from.
      while (at < size && (free[at] as number) < units) at += 1;
      if (at === size) return Number.POSITIVE_INFINITY;
      start = times[at] as number;
    }
    return start;
  }

  /** Takes units from `start` to `end`; negative ones give them back. */
  take(start: number, end: number, units: number): void {
    if (end <= start) return;
    const first = this.#cut(start, this.#at(start));
    let last = first;
    while (last < this.#size && (this.#times[last] as number) < end) last += 1;
    if (last === this.#size || this.#times[last] !== end) last = this.#cut(end, last - 1);
    for (let at = first; at < last; at += 1) this.#free[at] = (this.#free[at] as number) - units;
  }

  /** Calls with each stretch between two instants and its free units. */
  stretches(start: number, end: number, visit: (from: number, to: number, free: number) => void): void {
    for (let at = this.#at(start); at < this.#size && (this.#times[at] as number) < end; at += 1) {
      const to = at + 1 < this.#size ? (this.#times[at + 1] as number) : Number.POSITIVE_INFINITY;
      visit(Math.max(start, this.#times[at] as number), Math.min(end, to), this.#free[at] as number);
    }
  }

  /** Index of the stretch that an instant lies in. Most are near the end. */
  #at(instant: number): number {
    let low = 0;
    let high = this.#size - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#times[middle] as number) <= instant) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** Makes an instant the beginning of a stretch, given the stretch that it lies in. */
  #cut(instant: number, within: number): number {
    if (this.#times[within] === instant) return within;
    if (this.#size === this.#times.length) this.#grow(2 * this.#size);
    const at = within + 1;
    const times = this.#times;
    const free = this.#free;
    for (let move = this.#size; move > at; move -= 1) {
      times[move] = times[move - 1] as number;
      free[move] = free[move - 1] as number;
    }
    times[at] = instant;
    free[at] = free[within] as number;
    this.#size += 1;
    return at;
  }

  #grow(room: number): void {
    const [times, free] = [this.#times, this.#free];
    this.#times = new Float64Array(room);
    this.#free = new Float64Array(room);
    this.#times.set(times);
    this.#free.set(free);
  }
}
