import type { Problem } from "../model/problem";
import type { Schedule } from "./schedule";

type Window = { readonly from: number; readonly to: number };

/** Lengths of the window that a child has from its mother, as shares of her schedule. */
const SHORTEST = 0.1;
const LONGEST = 0.5;
/** How far a mutation throws a task, as a share of the schedule. */
const THROW = 0.5;
/** Tasks mutated in a child, on average. */
const THROWN = 1.5;

/** Share of the resources' capacities that each task uses, summed. */
export function densityOf({ size, uses, capacity }: Problem): Float64Array {
  const density = new Float64Array(size);
  for (let task = 0; task < size; task += 1) {
    for (let at = uses.start[task] ?? 0; at < (uses.start[task + 1] ?? 0); at += 1) {
      density[task] = (density[task] ?? 0) + (uses.amount[at] ?? 0) / (capacity[uses.item[at] ?? 0] || 1);
    }
  }
  return density;
}

/**
 * A child's keys: within a busy window of the mother's schedule her ends, outside the father's, so that what she packed
 * well stays together (after Valls, Ballestín and Quintanilla 2008, Debels and Vanhoucke 2005).
 */
export function crossKeys(
  mother: Schedule,
  father: Schedule,
  density: Float64Array,
  random: () => number,
  key: Float64Array,
): void {
  const begin = least(mother.start);
  const length = Math.max(1, most(mother.end) - begin);
  const { from, to } = busyWindow(mother, begin, length, density, random);
  // Farther than any two ends of one schedule lie apart.
  const apart = 4 * (most(father.end) - least(father.start) + length);
  for (let task = 0; task < key.length; task += 1) {
    const inMother = middle(mother, task);
    const inFather = middle(father, task);
    if (inMother >= from && inMother <= to)
      key[task] = mother.end[task] as number; // in range, like all here
    else if (inFather < from) key[task] = (father.end[task] as number) - apart;
    else if (inFather > to) key[task] = (father.end[task] as number) + apart;
    else key[task] = (mother.end[task] as number) + (inMother < from ? -apart : apart);
  }
}

/** Throws a task or two to another place. */
export function mutateKeys(
  key: Float64Array,
  { start, end }: Schedule,
  random: () => number,
  times = THROWN,
): void {
  const reach = THROW * (most(end) - least(start));
  const chance = times / key.length;
  for (let task = 0; task < key.length; task += 1) {
    if (random() < chance) key[task] = Math.round((key[task] as number) + (2 * random() - 1) * reach);
  }
}

/** The busier of two windows. */
function busyWindow(
  schedule: Schedule,
  begin: number,
  length: number,
  density: Float64Array,
  random: () => number,
): Window {
  const windows = [0, 1].map((): Window => {
    const width = length * (SHORTEST + random() * (LONGEST - SHORTEST));
    const from = begin + random() * (length - width);
    return { from: Math.floor(from), to: Math.ceil(from + width) };
  });
  const [one, other] = windows as [Window, Window]; // two were made
  return use(schedule, one, density) >= use(schedule, other, density) ? one : other;
}

function use({ start, end }: Schedule, { from, to }: Window, density: Float64Array): number {
  let used = 0;
  for (let task = 0; task < density.length; task += 1) {
    const within = Math.min(end[task] as number, to) - Math.max(start[task] as number, from);
    if (within > 0) used += within * (density[task] as number);
  }
  return used / (to - from);
}

function middle({ start, end }: Schedule, task: number): number {
  return ((start[task] as number) + (end[task] as number)) / 2;
}

function least(values: Float64Array): number {
  let found = Number.POSITIVE_INFINITY;
  for (const value of values) found = Math.min(found, value);
  return found;
}

function most(values: Float64Array): number {
  let found = Number.NEGATIVE_INFINITY;
  for (const value of values) found = Math.max(found, value);
  return found;
}
