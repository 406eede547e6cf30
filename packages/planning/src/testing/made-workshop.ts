import type { Hold, PlanModel, PlanResource, PlanTask, Span } from "../model/plan-question";
import { randomFrom } from "../search/random";

const DAY = 24 * 60;
const WEEK = 7 * DAY;

export type WorkshopSize = {
  readonly jobs: number;
  readonly hoists: number;
  readonly people: number;
  readonly dynos: number;
  readonly weeks: number;
  /** Jobs come in over so many weeks. */
  readonly spread: number;
  readonly seed: number;
};

/**
 * A made workshop in minutes: each job has a baseline on the dyno, then is taken apart, fitted, put together, calibrated
 * and proven. From teardown to reassembly it keeps a hoist; the cell cools before teardown; people go home at night.
 */
export function madeWorkshop({ jobs, hoists, people, dynos, weeks, spread, seed }: WorkshopSize): PlanModel {
  const random = randomFrom(seed);
  const among = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const quarters = (low: number, high: number): number => 15 * among(low, high);
  const day = (from: number, to: number): readonly Span[] => shifts(weeks, from * 60, to * 60);
  const resources: PlanResource[] = [
    { id: "hoists", capacity: hoists },
    ...Array.from({ length: dynos }, (_, at) => ({ id: `dyno${at}`, capacity: 1, open: day(8, 18) })),
    ...Array.from({ length: people }, (_, at) => ({
      id: `person${at}`,
      capacity: 1,
      open: day(7 + (at % 3), 16 + (at % 3)),
    })),
  ];
  const tasks: PlanTask[] = [];
  const holds: Hold[] = [];
  for (let job = 0; job < jobs; job += 1) {
    const person = { [`person${among(dynos, people - 1)}`]: 1 };
    const cell = among(0, dynos - 1);
    // The first people are the calibrators, one to each cell.
    const dyno = { [`dyno${cell}`]: 1, [`person${cell}`]: 1 };
    const id = (step: string): string => `${job}-${step}`;
    const release = Math.floor(random() * spread * WEEK);
    const due = release + among(7, 14) * DAY;
    const step = (name: string, rest: Omit<PlanTask, "id">): void =>
      void tasks.push({ id: id(name), ...rest });
    step("baseline", { duration: quarters(4, 6), uses: dyno, release });
    step("teardown", {
      duration: quarters(8, 20),
      uses: { ...person, hoists: 1 },
      after: [{ task: id("baseline"), lag: 120 }],
      splittable: true,
    });
    step("fitting", {
      duration: quarters(12, 40),
      uses: { ...person, hoists: 1 },
      after: [{ task: id("teardown") }],
      splittable: true,
    });
    step("reassembly", {
      duration: quarters(6, 16),
      uses: { ...person, hoists: 1 },
      after: [{ task: id("fitting") }],
      splittable: true,
    });
    step("calibration", { duration: quarters(8, 16), uses: dyno, after: [{ task: id("reassembly") }] });
    step("proof", {
      duration: quarters(4, 6),
      uses: dyno,
      after: [{ task: id("calibration"), lag: 60 }],
      due,
      weight: among(1, 3),
    });
    holds.push({ resource: "hoists", from: id("teardown"), to: id("reassembly") });
  }
  return { resources, tasks, holds, objective: "weighted-tardiness" };
}

/** Monday to Friday, with half an hour off at noon. */
function shifts(weeks: number, opens: number, closes: number): readonly Span[] {
  return Array.from({ length: weeks * 7 }, (_, day) => day)
    .filter((day) => day % 7 < 5)
    .flatMap((day): Span[] => [
      [day * DAY + opens, day * DAY + 720],
      [day * DAY + 750, day * DAY + closes],
    ]);
}
