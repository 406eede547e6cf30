import { earliestPromise, plan, repairs } from "@buildproof/planning";
import { madeWorkshop } from "@buildproof/planning/testing";
import type { Benchmark } from "./benchmark";

/** 40 resources, 200 jobs in 1,200 blocks. */
const workshop = madeWorkshop({
  jobs: 200,
  hoists: 14,
  people: 34,
  dynos: 5,
  weeks: 26,
  spread: 4,
  seed: 1,
});
const booked = plan(workshop, { schedules: 1 });
const text = JSON.stringify(workshop);
const baseline = { name: "reading the question", run: (): unknown => JSON.parse(text) };

export const firstPlanBenchmark: Benchmark = {
  name: "first plan, 1,200 blocks",
  rounds: 5,
  ours: { name: "plan, one pass", run: () => plan(workshop, { schedules: 1 }).objective },
  baseline,
  limits: { ms: 500 },
};

const bookings = [
  ...workshop.tasks.flatMap(({ id, uses = {} }) =>
    Object.keys(uses)
      .filter((resource) => resource !== "hoists")
      .map((resource) => ({ resource, from: booked.start[id] ?? 0, to: booked.end[id] ?? 0 })),
  ),
  ...(workshop.holds ?? []).map(({ resource, from, to }) => ({
    resource,
    from: booked.start[from] ?? 0,
    to: booked.end[to] ?? 0,
  })),
];
const job = madeWorkshop({ jobs: 1, hoists: 14, people: 34, dynos: 5, weeks: 26, spread: 4, seed: 2 });

export const promiseBenchmark: Benchmark = {
  name: "promise beside 1,200 blocks",
  ours: {
    name: "earliestPromise",
    run: () =>
      earliestPromise({
        resources: workshop.resources,
        booked: bookings,
        tasks: job.tasks,
        holds: job.holds,
      }).handOver,
  },
  baseline,
  limits: { ms: 50 },
};

export const repairBenchmark: Benchmark = {
  name: "repair of 1,200 blocks",
  rounds: 5,
  ours: {
    name: "repairs, one person away",
    run: () =>
      repairs({
        model: workshop,
        start: booked.start,
        now: 10_080,
        disruptions: [{ kind: "away", resource: "person7", from: 12_000, to: 16_000 }],
      }).length,
  },
  baseline,
  limits: { ms: 1_000 },
};
