import type { Place } from "../model/calendar";
import type { Cluster, Problem } from "../model/problem";
import type { Board } from "./board";
import { placeCluster } from "./place-cluster";
import { Profile } from "./profile";

/** Units that something outside the question has for a time. */
export type Occupied = {
  readonly resource: number;
  readonly from: number;
  readonly to: number;
  readonly units: number;
};

/**
 * Serial schedule generation (Kelley 1963): tasks are taken in the order of a list and each is put at its earliest place,
 * so that whatever the list, nothing is double-booked. Indices come from the problem's own arrays, hence the `as number`
 * in the loops that run millions of times.
 */
export class Decoder implements Board {
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly profiles: readonly Profile[];
  readonly #settled: readonly Profile[];
  /** Earliest start besides precedence: releases, or what a justification pass sets. */
  floor: Float64Array;
  readonly #isPlaced: Uint8Array;
  readonly #hasSettled: boolean;
  readonly #laid = new Set<Cluster>();
  readonly position: Float64Array;
  readonly #place: Place = { start: 0, end: 0 };
  /** Tasks that found no place or end later than a settled successor allows; 0 in a schedule that holds. */
  misfits = 0;

  constructor(
    readonly problem: Problem,
    occupied: readonly Occupied[] = [],
  ) {
    const { size, capacity, release, fixed } = problem;
    this.start = new Float64Array(size);
    this.end = new Float64Array(size);
    this.floor = release;
    this.#isPlaced = new Uint8Array(size);
    this.position = new Float64Array(size);
    this.#hasSettled = fixed.some((start) => !Number.isNaN(start));
    this.profiles = capacity.map((units) => new Profile(units));
    this.#settled = capacity.map((units) => new Profile(units));
    for (const { resource, from, to, units } of occupied) this.#settled[resource]?.take(from, to, units);
    for (let task = 0; task < size; task += 1) {
      if (Number.isNaN(fixed[task] as number)) continue;
      this.start[task] = fixed[task] as number;
      this.end[task] = this.endFrom(task, fixed[task] as number);
      this.#take(this.#settled, task);
    }
  }

  /**
   * Makes the schedule of a list. Tasks that stand before a predecessor wait for it. What is settled comes first: holds
   * that it began, and what has to be done before it; where one leaves the other no room, the other goes first.
   */
  decode(list: ArrayLike<number>): void {
    this.#attempt(list, true);
    if (this.misfits > 0 && this.#hasSettled) this.#attempt(list, false);
  }

  #attempt(list: ArrayLike<number>, isHoldFirst: boolean): void {
    const { size, fixed } = this.problem;
    for (const [at, profile] of this.profiles.entries()) profile.copy(this.#settled[at] ?? profile);
    this.misfits = 0;
    this.#laid.clear();
    for (let task = 0; task < size; task += 1) {
      this.#isPlaced[task] = Number.isNaN(fixed[task] as number) ? 0 : 1;
    }
    for (let at = 0; at < list.length; at += 1) this.position[list[at] as number] = at;
    if (this.#hasSettled) {
      if (isHoldFirst) this.#placeBegunHolds();
      this.#placePressed(list);
      if (!isHoldFirst) this.#placeBegunHolds();
    }
    for (let at = 0; at < list.length; at += 1) {
      if (this.#isPlaced[list[at] as number] === 0) this.place(list[at] as number);
    }
  }

  #placeBegunHolds(): void {
    const { clusters, fixed } = this.problem;
    for (const cluster of clusters) {
      if (cluster.tasks.some((task) => !Number.isNaN(fixed[task] as number))) this.#placeCluster(cluster);
    }
  }

  /** What something settled waits for. */
  #placePressed(list: ArrayLike<number>): void {
    for (let at = 0; at < list.length; at += 1) {
      const task = list[at] as number;
      if (this.problem.latestEnd[task] !== Number.POSITIVE_INFINITY) this.place(task);
    }
  }

  place(task: number): void {
    if (this.#isPlaced[task] === 1) return;
    const cluster = this.problem.clusters[this.problem.clusterOf[task] as number];
    if (cluster) this.#placeCluster(cluster);
    else {
      this.placeEarlier(task, () => true);
      this.placeAt(task, this.earliest(task, this.readyAt(task)));
    }
  }

  /** Places the predecessors that are not placed yet and are `wanted`. */
  placeEarlier(task: number, wanted: (task: number) => boolean): void {
    const { start, item } = this.problem.before;
    for (let at = start[task] as number; at < (start[task + 1] as number); at += 1) {
      const earlier = item[at] as number;
      if (this.#isPlaced[earlier] === 0 && wanted(earlier)) this.place(earlier);
    }
  }

  #placeCluster(cluster: Cluster): void {
    if (this.#laid.has(cluster)) return;
    this.#laid.add(cluster);
    if (!placeCluster(this, cluster)) this.misfits += 1;
    for (const task of cluster.tasks) this.#isPlaced[task] = 1;
  }

  isSettled(task: number): boolean {
    return !Number.isNaN(this.problem.fixed[task] as number);
  }

  /** When its predecessors and its own floor let a task begin. */
  readyAt(task: number): number {
    const { start, item, amount } = this.problem.before;
    let ready = this.floor[task] as number;
    for (let at = start[task] as number; at < (start[task + 1] as number); at += 1) {
      const free = (this.end[item[at] as number] as number) + (amount[at] as number);
      if (free > ready) ready = free;
    }
    return ready;
  }

  /** The earliest start at or after `ready` with open hours and free units; infinite when there is none. */
  earliest(task: number, ready: number): number {
    const { uses, duration, calendar, isSplittable } = this.problem;
    const hours = calendar[task] ?? null;
    const [first, last] = [uses.start[task] as number, uses.start[task + 1] as number];
    const needed = duration[task] as number;
    let start = ready;
    let length = needed;
    for (let checked = 0, at = first; ; ) {
      if (hours && checked === 0) {
        if (!hours.earliest(start, needed, isSplittable[task] === true, this.#place))
          return Number.POSITIVE_INFINITY;
        start = this.#place.start;
        length = this.#place.end - start;
      }
      if (checked === last - first || needed === 0) return start;
      const profile = this.profiles[uses.item[at] as number] as Profile;
      const free = profile.earliest(start, length, uses.amount[at] as number);
      // A later start has to be tried again on the others; this one has it already unless hours intervene.
      if (free > start) checked = hours ? -1 : 0;
      start = free;
      checked += 1;
      at = at + 1 === last ? first : at + 1;
    }
  }

  /** The earliest instant from which others leave so many units of a resource alone for so long. */
  freeFrom(resource: number, from: number, length: number, units: number): number {
    return this.#settled[resource]?.earliest(from, length, units) ?? from;
  }

  /** When a task ends that begins then; infinite when its hours do not let it begin there. */
  endFrom(task: number, start: number): number {
    const { calendar, duration, isSplittable } = this.problem;
    const hours = calendar[task] ?? null;
    if (!hours) return start + (duration[task] as number);
    const isOpen = hours.earliest(start, duration[task] as number, isSplittable[task] === true, this.#place);
    return isOpen && this.#place.start === start ? this.#place.end : Number.POSITIVE_INFINITY;
  }

  placeAt(task: number, start: number): void {
    this.start[task] = start;
    this.end[task] = start === Number.POSITIVE_INFINITY ? start : this.endFrom(task, start);
    this.#isPlaced[task] = 1;
    if (
      !((this.end[task] as number) <= (this.problem.latestEnd[task] as number)) ||
      this.end[task] === Number.POSITIVE_INFINITY
    ) {
      this.misfits += 1;
    }
    if (start !== Number.POSITIVE_INFINITY) this.#take(this.profiles, task);
  }

  /** Takes a task out again. */
  remove(task: number): void {
    if (this.start[task] !== Number.POSITIVE_INFINITY) this.#take(this.profiles, task, -1);
    this.#isPlaced[task] = 0;
  }

  isPlaced(task: number): boolean {
    return this.#isPlaced[task] === 1;
  }

  #take(profiles: readonly Profile[], task: number, times = 1): void {
    const { start, item, amount } = this.problem.uses;
    for (let at = start[task] as number; at < (start[task + 1] as number); at += 1) {
      const units = times * (amount[at] as number);
      profiles[item[at] as number]?.take(this.start[task] as number, this.end[task] as number, units);
    }
  }
}
