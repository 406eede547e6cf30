import { type PlanModel, type PlanTask, plan } from "@buildproof/planning";
import { readInstance, violations } from "@buildproof/planning/testing";
import { describe, expect, test } from "vitest";
import { engineeringVectors } from "./expect-vector";
import { type Measured, referenceVectors, unusedVectors } from "./reference-vectors";

// One published optimum, and questions derived from it whose optimum follows from it by reasoning alone.
const [given] = referenceVectors<{ readonly text: string }, { readonly makespan: Measured }>("planning.json");
if (!given) throw new Error("planning.json has no job shop.");
const shop = readInstance(given.inputs.text);
const OPTIMUM = 55;

/** Plans until the known optimum is reached; a plan that breaks a rule, or is shorter than the optimum, fails. */
function reaches(model: PlanModel, optimum: number): number {
  let best = Number.POSITIVE_INFINITY;
  const found = plan(model, {
    schedules: 40_000,
    seed: 2,
    stopped: () => best <= optimum,
    improved: ({ objective }) => {
      best = objective;
    },
  });
  expect(violations(model, found.start, found.end)).toEqual([]);
  expect(found.lowerBound).toBeLessThanOrEqual(optimum);
  expect(found.objective).toBe(optimum);
  return found.objective;
}

const changed = (change: (task: PlanTask) => PlanTask): PlanModel => ({
  ...shop,
  tasks: shop.tasks.map(change),
});
const last: PlanTask = { id: "end", duration: 0, after: shop.tasks.map(({ id }) => ({ task: id })) };

test("the 6×6 job shop ends at its proven optimum (Fisher and Thompson 1963)", () => {
  const { expects } = engineeringVectors("planning.json")("job-shop-6x6");
  expects("makespan", reaches(shop, OPTIMUM));
});

describe("derived from it", () => {
  test("released later, all of it ends so much later", () => {
    reaches(
      changed((task) => ({ ...task, release: 1_000 })),
      OPTIMUM + 1_000,
    );
  });

  test("a first task of so much time before everything is the same as a release", () => {
    const first = { id: "first", duration: 17 };
    const model = changed((task) => ({ ...task, after: [...(task.after ?? []), { task: "first" }] }));
    reaches({ ...model, tasks: [first, ...model.tasks] }, OPTIMUM + 17);
  });

  test("in another unit of time it takes as many times more", () => {
    reaches(
      changed((task) => ({ ...task, duration: task.duration * 60 })),
      OPTIMUM * 60,
    );
  });

  test("with all arrows turned round it takes as long", () => {
    const before = new Map<string, { task: string }[]>();
    for (const { id, after = [] } of shop.tasks) {
      for (const { task } of after) before.set(task, [...(before.get(task) ?? []), { task: id }]);
    }
    reaches(
      changed((task) => ({ ...task, after: before.get(task.id) ?? [] })),
      OPTIMUM,
    );
  });

  test("two shops side by side end with the later of them", () => {
    const other: PlanModel = {
      resources: shop.resources.map(({ id, capacity }) => ({ id: `other ${id}`, capacity })),
      tasks: shop.tasks.map((task) => ({
        ...task,
        id: `other ${task.id}`,
        uses: Object.fromEntries(
          Object.entries(task.uses ?? {}).map(([id, units]) => [`other ${id}`, units]),
        ),
        after: (task.after ?? []).map(({ task: id }) => ({ task: `other ${id}` })),
        release: 9,
      })),
    };
    reaches(
      { resources: [...shop.resources, ...other.resources], tasks: [...shop.tasks, ...other.tasks] },
      OPTIMUM + 9,
    );
  });

  test("with one calendar for all and work that may pause, it ends at the first instant with so much open time", () => {
    // 10 open, 7 closed: 55 open units are done 5 units into the sixth span.
    const open = Array.from({ length: 40 }, (_, at) => [17 * at, 17 * at + 10] as const);
    const resources = shop.resources.map((resource) => ({ ...resource, open }));
    reaches({ ...changed((task) => ({ ...task, splittable: true })), resources }, 5 * 17 + 5);
  });

  test("a wait behind its end comes on top", () => {
    const inspected: PlanTask = { id: "inspection", duration: 0, after: [{ task: "end", lag: 12 }] };
    reaches({ ...shop, tasks: [...shop.tasks, last, inspected] }, OPTIMUM + 12);
  });

  test("due at its optimum it is not late, and due sooner it is late by so much, weighted", () => {
    const due = (at: number): PlanModel => ({
      ...shop,
      tasks: [...shop.tasks, { ...last, due: at, weight: 3 }],
      objective: "weighted-tardiness",
    });
    reaches(due(OPTIMUM), 0);
    reaches(due(OPTIMUM - 4), 12);
  });

  test("planned again with everything where it was, nothing moves", () => {
    const first = plan(shop, { schedules: 300 });
    const again = plan({ ...shop, fixed: first.start }, { schedules: 300 });
    expect(again.start).toEqual(first.start);
  });
});

test("every vector of the file is checked above", () => {
  expect(unusedVectors("planning.json")).toEqual([]);
});
