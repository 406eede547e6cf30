import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PlanModel, PlanTask } from "../model/plan-question";
import { plan } from "../plan";
import { smallModels } from "../testing/small-models";
import { violations } from "../testing/violations";
import { percentilePromise } from "./percentile-promise";
import { earliestPromise } from "./promise";

const day = (n: number): readonly [number, number] => [n * 1440 + 480, n * 1440 + 1020];
const week = [day(0), day(1), day(2), day(3), day(4)];
const resources = [
  { id: "dyno", capacity: 1, open: week },
  { id: "operator", capacity: 1, open: week },
  { id: "hoist", capacity: 2 },
];
const dyno = { dyno: 1, operator: 1 };
const job: readonly PlanTask[] = [
  { id: "baseline", duration: 90, uses: dyno, release: 480 },
  { id: "fitting", duration: 300, uses: { hoist: 1 }, after: [{ task: "baseline", lag: 120 }] },
  { id: "proof", duration: 90, uses: dyno, after: [{ task: "fitting" }] },
];

describe("a promise", () => {
  test("takes the first free place and says what it waited for", () => {
    const booked = [{ resource: "operator", from: 1440, to: 2 * 1440 }];
    const { begins, handOver, waits } = earliestPromise({ resources, booked, tasks: job });
    expect(begins).toBe(480);
    // The fitting ends at 990; 30 minutes are left that day, and the operator is away on the next.
    expect(handOver).toBe(2 * 1440 + 480 + 90);
    expect(waits[0]).toEqual({
      task: "proof",
      for: "resource",
      resource: "operator",
      from: 990,
      until: 2 * 1440 + 480,
    });
  });

  test("waits for parts, and says so", () => {
    const late = job.map((task) => (task.id === "fitting" ? { ...task, release: 1440 + 480 } : task));
    const { waits } = earliestPromise({ resources, booked: [], tasks: late });
    expect(waits).toContainEqual({
      task: "fitting",
      for: "release",
      resource: null,
      from: 690,
      until: 1440 + 480,
    });
  });

  test("waits for opening hours, and says for whose", () => {
    const { waits } = earliestPromise({ resources, booked: [], tasks: job });
    expect(waits[0]).toMatchObject({ task: "proof", for: "hours", resource: "dyno", until: 1440 + 480 });
  });

  test("a hoist that is held is waited for", () => {
    const holds = [{ resource: "hoist", from: "fitting", to: "proof" }];
    const booked = [{ resource: "hoist", from: 900, to: 5000, units: 2 }];
    const { start, waits } = earliestPromise({ resources, booked, tasks: job, holds });
    expect(start.fitting).toBe(5000);
    expect(waits).toContainEqual({
      task: "fitting",
      for: "resource",
      resource: "hoist",
      from: 690,
      until: 5000,
    });
  });

  test("beside any plan breaks nothing of it, and no plan of the job with the others settled ends before it by more than order explains", () => {
    fc.assert(
      fc.property(smallModels({ tasks: 6, longest: 3 }), fc.integer({ min: 1, max: 4 }), (model, length) => {
        const others: PlanModel = { ...model, holds: [], objective: "makespan" };
        const first = plan(others, { schedules: 30 });
        const booked = others.tasks.flatMap(({ id, uses = {} }) =>
          Object.entries(uses).map(([resource, units]) => ({
            resource,
            units,
            from: first.start[id] ?? 0,
            to: first.end[id] ?? 0,
          })),
        );
        const tasks: PlanTask[] = [
          { id: "one", duration: Math.min(3, length), uses: { a: 1 } },
          { id: "two", duration: Math.min(3, length), uses: { b: 1 }, after: [{ task: "one", lag: 1 }] },
        ];
        const promised = earliestPromise({ resources: others.resources, booked, tasks });
        const all: PlanModel = { ...others, tasks: [...others.tasks, ...tasks] };
        const start = { ...first.start, ...promised.start };
        expect(violations(all, start, { ...first.end, ...promised.end })).toEqual([]);
        const due = tasks.map((task) => (task.id === "two" ? { ...task, due: 0 } : task));
        const best = plan(
          {
            ...others,
            tasks: [...others.tasks.map((task) => ({ ...task, weight: 0 })), ...due],
            fixed: first.start,
            objective: "weighted-tardiness",
          },
          { schedules: 60 },
        );
        expect(promised.handOver).toBe(best.objective);
      }),
      { numRuns: 150 },
    );
  });

  test("of an unknown resource is refused by name", () => {
    const booked = [{ resource: "lathe", from: 0, to: 1 }];
    expect(() => earliestPromise({ resources, booked, tasks: job })).toThrow(/no resource "lathe"/);
  });
});

describe("a promise of 80 percent", () => {
  const open = { resources: [{ id: "hoist", capacity: 1 }], booked: [] };
  const once = [{ id: "fitting", duration: 1_000, uses: { hoist: 1 } }];
  const ask = (tasks: Parameters<typeof percentilePromise>[0]["tasks"], options = {}) =>
    percentilePromise({ ...open, tasks }, { tries: 4_000, ...options });

  test("is the quantile of the triangle it draws from", () => {
    // Triangle on [850, 1500] with its top at 1000: quantile 1500 − √(0.2 · 650 · 500) = 1245.05 by its distribution function.
    expect(Math.abs(ask(once).handOver - 1_245)).toBeLessThan(12);
    expect(ask(once).median).toBeLessThan(ask(once).handOver);
  });

  test("of a first of its kind takes 1.6 times as long", () => {
    const first = once.map((task) => ({ ...task, isFirstOfKind: true }));
    expect(ask(first).handOver / ask(once).handOver).toBeCloseTo(1.6, 2);
  });

  test("counts a second visit in a third of the builds, so that the 80th percent has it and the median has not", () => {
    const twice = [
      ...once,
      { id: "again", duration: 5_000, uses: { hoist: 1 }, after: [{ task: "fitting" }], isSecondVisit: true },
    ];
    expect(ask(twice).handOver).toBeGreaterThan(5_000);
    expect(ask(twice).median).toBeLessThan(1_500);
    expect(ask(twice, { percentile: 60 }).handOver).toBeLessThan(1_500);
  });

  test("is the same for the same seed, and refuses certainty", () => {
    expect(ask(once, { seed: 5 })).toEqual(ask(once, { seed: 5 }));
    expect(() => ask(once, { percentile: 100 })).toThrow(/percentile from 1 to 99/);
  });
});
