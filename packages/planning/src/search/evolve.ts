import { crossKeys, densityOf, mutateKeys } from "./crossover";
import type { Direction } from "./direction";
import { latestFinishes, workPerWeight } from "./priorities";
import { canSampleParallel, sampleParallel, sampleSerial } from "./sample";
import { ranked, type Schedule } from "./schedule";
import type { Search } from "./search";

/** Population of 30 tasks and 1,000 schedules over √(schedules / tasks): measured, see decision 0011. */
const POPULATION = 10.4;
/** A search that is bounded by time alone breeds as one of so many would. */
const NOMINAL = 50_000;
const SMALLEST = 8;
const LARGEST = 200;
/** Of the schedules of weighted lateness, so many are justified as well. */
const JUSTIFIED = 0.2;

/**
 * Two populations that breed each other: schedules made forwards, and made backwards. A child of two of one kind is a
 * schedule of the other, so every child is justified at the price of one pass (after Debels and Vanhoucke 2005). Lateness
 * has no mirror, so there one population breeds itself. It gives way after every child, so that a caller can look at the
 * clock or do something else between.
 */
export function* evolve(search: Search): Generator<void, void> {
  const { problem, limits } = search;
  const wanted = POPULATION * Math.sqrt(Math.min(limits.schedules, NOMINAL) / Math.max(1, problem.size));
  const size = Math.round(Math.min(LARGEST, Math.max(SMALLEST, wanted)));
  const isMirrored = problem.objective === "makespan";
  const breeder = new Breeder(search);
  while (!search.isOver) {
    let { early, late } = yield* firstPopulations(search, size, isMirrored);
    for (let barren = 0; !search.isOver && barren < 2; ) {
      const before = search.best?.cost;
      const children = yield* breeder.children(isMirrored ? late : early, search.forward);
      const next = ranked([...early, ...children], size);
      barren =
        next.every((schedule) => early.includes(schedule)) && search.best?.cost === before ? barren + 1 : 0;
      early = next;
      if (isMirrored && search.best) search.aim(search.best);
      if (isMirrored) late = ranked([...late, ...(yield* breeder.children(early, search.backward))], size);
    }
  }
}

type Populations = { readonly early: Schedule[]; readonly late: Schedule[] };

function* firstPopulations(search: Search, size: number, isMirrored: boolean): Generator<void, Populations> {
  const { problem, forward, random } = search;
  const rules = isMirrored ? [latestFinishes(problem)] : [latestFinishes(problem), workPerWeight(problem)];
  const early: Schedule[] = [];
  const late: Schedule[] = [];
  const isParallel = canSampleParallel(problem);
  for (let made = 0; made < size && !search.isOver; made += 1) {
    const rule = rules[made % rules.length] ?? new Float64Array(problem.size);
    // The rules themselves come first, once.
    const sampler = {
      rule,
      random: search.schedules < 3 * rules.length && made < rules.length ? null : random,
    };
    const sample = isParallel && (!sampler.random || random() < 0.5) ? sampleParallel : sampleSerial;
    const first = search.count(sample(forward, sampler), forward);
    if (search.isOver) break;
    const right = search.justifyRight(first);
    late.push(right);
    if (search.isOver) break;
    const left = search.justifyLeft(right);
    early.push(left.cost <= first.cost ? left : first);
    yield;
  }
  return { early: ranked(early, size), late: ranked(late, size) };
}

class Breeder {
  readonly #key: Float64Array;
  readonly #density: Float64Array;

  constructor(readonly search: Search) {
    this.#key = new Float64Array(search.problem.size);
    this.#density = densityOf(search.problem);
  }

  /** A child of every parent, decoded in the direction given. */
  *children(parents: readonly Schedule[], direction: Direction): Generator<void, readonly Schedule[]> {
    const children: Schedule[] = [];
    // While the better half still differs, crossing alone does more; then it has nothing new to combine.
    const isAlike = parents[0]?.cost === parents[parents.length >> 1]?.cost;
    for (const mother of parents) {
      if (this.search.isOver) break;
      const { random } = this.search;
      const father = this.#father(parents);
      crossKeys(mother, father, this.#density, random, this.#key);
      if (isAlike) mutateKeys(this.#key, mother, random);
      children.push(this.#child(direction));
      yield;
    }
    return children;
  }

  /** The better of two by chance. */
  #father(parents: readonly Schedule[]): Schedule {
    const { random } = this.search;
    const [one = 0, other = 0] = [0, 1].map(() => Math.floor(random() * parents.length));
    // The population is ranked, and a parent there is whenever a child is made.
    return parents[Math.min(one, other)] as Schedule;
  }

  #child(direction: Direction): Schedule {
    const { search } = this;
    if (search.problem.objective === "makespan") {
      return search.count(direction.decode(direction.listBy(this.#key)), direction);
    }
    const key = this.#key;
    for (let task = 0; task < key.length; task += 1) key[task] = -(key[task] ?? 0);
    const child = search.count(direction.decode(direction.listBy(key)), direction);
    if (search.random() > JUSTIFIED || search.isOver) return child;
    const right = search.justifyRight(child);
    if (search.isOver) return child;
    const left = search.justifyLeft(right);
    return left.cost <= child.cost ? left : child;
  }
}
