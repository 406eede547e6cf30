import type { HourRate, JobStage } from "../catalogue/types";
import type { PricedSelection } from "../price-selection";
import type { SeededRandom } from "../seeded-random";
import { dynoCell, hoists } from "../workshop-rows";
import type { Slot, SlotBook } from "./slot-book";

/** One stretch of work on a job and who and what it took. */
export type Visit = {
  readonly kind: "inspection" | "baseline" | "fitting" | "dyno" | "second-dyno" | "finishing" | "re-torque";
  readonly slot: Slot;
  /** Person first, then dyno cell or hoist where there is one. */
  readonly resources: readonly string[];
  /** Operations and access work in order, with the minutes each really took; none where the dyno is charged. */
  readonly tasks: readonly { readonly code: string; readonly minutes: number }[];
};

export type JobTimes = { readonly visits: readonly Visit[]; readonly secondDynoHours: number };

const blowerMechanics = ["Tilda Brennock", "Joss Varga"];
/** The manager takes a spanner for the smaller jobs. */
const mechanics = [...blowerMechanics, "Marek Oduya"];
const operators = ["Marek Oduya", "Tilda Brennock"];
const SECOND_DYNO_HOURS = 1.5;
const SECOND_DYNO_SHARE = 0.3;
const DAY_MINUTES = 480;

type Part = {
  readonly code: string;
  readonly hours: number;
  readonly stage: JobStage;
  readonly rate: HourRate;
};

/**
 * Hours of the n-th job of a kind over the hours quoted: 1.6 for the first, 1.2 for the third, 1.0 for the
 * tenth (common practice, no source); between them along the logarithm of n.
 */
export function learning(n: number): number {
  const between = (from: number, to: number, low: number, high: number) =>
    high + (low - high) * (1 - Math.log(n / from) / Math.log(to / from));
  if (n <= 3) return between(1, 3, 1.6, 1.2);
  return n >= 10 ? 1 : between(3, 10, 1.2, 1);
}

/** Lays a job into the earliest free time; null when it does not fit before the end. */
export function planJob(
  book: SlotBook,
  random: SeededRandom,
  job: {
    readonly priced: PricedSelection;
    readonly isBoosted: boolean;
    readonly earliestInspection: number;
    readonly partsDays: number;
    /** Real hours over quoted hours. */
    readonly slower: number;
    readonly failsInspection: boolean;
  },
): JobTimes | null {
  const parts = partsOf(job.priced);
  const visits: Visit[] = [];
  let ready = job.earliestInspection;
  const go = (
    kind: Visit["kind"],
    wanted: readonly Part[],
    groups: readonly (readonly string[])[],
    wait = 0,
  ) => {
    if (wanted.length === 0) return true;
    const tasks = wanted.map(({ code, hours }) => ({
      code,
      minutes: Math.max(5, Math.round(hours * 60 * (kind === "inspection" ? 1 : job.slower))),
    }));
    const length = tasks.reduce((sum, task) => sum + task.minutes, 0);
    const found = book.take(ready + wait, length, groups);
    if (!found) return false;
    visits.push({ kind, ...found, tasks: groups.some((group) => group.includes(dynoCell)) ? [] : tasks });
    ready = found.slot.to;
    return true;
  };
  const of = (rate: HourRate, ...stages: JobStage[]) =>
    parts.filter((part) => part.rate === rate && stages.includes(part.stage));
  const crew = shuffled(job.isBoosted ? blowerMechanics : mechanics, random);
  const lifts = shuffled(hoists, random);
  const cell = [operators, [dynoCell]];

  const inspects =
    go("inspection", of("workshop", "inspection"), [crew, lifts]) &&
    go("baseline", of("dyno", "inspection"), cell);
  if (!inspects) return null;
  if (job.failsInspection) return { visits, secondDynoHours: 0 };

  const isSecondVisit = job.isBoosted && random.chance(SECOND_DYNO_SHARE);
  const again: Part = { code: "measure-proof", hours: SECOND_DYNO_HOURS, stage: "proof", rate: "dyno" };
  const works =
    go(
      "fitting",
      of("workshop", "teardown", "fitting", "first-start"),
      [crew, lifts],
      job.partsDays * DAY_MINUTES,
    ) &&
    go("dyno", of("dyno", "calibration", "proof"), cell) &&
    go("finishing", of("workshop", "calibration", "proof", "road-test", "hand-over"), [crew]) &&
    (!isSecondVisit || go("second-dyno", [again], cell, random.integer(1, 3) * DAY_MINUTES));
  return works ? { visits, secondDynoHours: isSecondVisit ? SECOND_DYNO_HOURS : 0 } : null;
}

/** Access work stands with the first operation that needs it. */
function partsOf(priced: PricedSelection): readonly Part[] {
  const placed = new Set<string>();
  return priced.operations
    .filter((operation) => operation.stage !== "after")
    .flatMap((operation) => {
      const own: Part = {
        code: operation.id,
        hours: operation.ownHours,
        stage: operation.stage,
        rate: operation.rate,
      };
      const access = accessOf(operation.access, priced).filter((each) => !placed.has(each.id));
      for (const { id } of access) placed.add(id);
      return [
        ...access.map(({ id, hours, rate }) => ({ code: id, hours, rate, stage: operation.stage })),
        own,
      ];
    });
}

function accessOf(codes: readonly string[], priced: PricedSelection): PricedSelection["access"] {
  const needed = new Set<string>();
  const need = (code: string) => {
    needed.add(code);
    for (const other of priced.access.find(({ id }) => id === code)?.needs ?? []) need(other);
  };
  for (const code of codes) need(code);
  return priced.access.filter(({ id }) => needed.has(id));
}

/** Once the vehicle has run some weeks; null when that is not yet, or nothing is to be re-torqued. */
export function planRetorque(
  book: SlotBook,
  random: SeededRandom,
  priced: PricedSelection,
  earliest: number,
): Visit | null {
  const tasks = priced.operations
    .filter((operation) => operation.stage === "after")
    .map(({ id, ownHours }) => ({ code: id, minutes: Math.round(ownHours * random.between(55, 70)) }));
  if (tasks.length === 0) return null;
  const length = tasks.reduce((sum, task) => sum + task.minutes, 0);
  const found = book.take(earliest, length, [shuffled(mechanics, random), shuffled(hoists, random)]);
  return found && { kind: "re-torque", ...found, tasks };
}

function shuffled<T>(list: readonly T[], random: SeededRandom): readonly T[] {
  const first = random.integer(0, list.length - 1);
  return [...list.slice(first), ...list.slice(0, first)];
}
