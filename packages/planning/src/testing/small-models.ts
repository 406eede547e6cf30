import fc from "fast-check";
import type { PlanModel } from "../model/plan-question";

export type Shape = { readonly tasks: number; readonly longest: number };

/** Questions of a few tasks with everything that a question may have: hours, pauses, lags, releases, holds, due dates. */
export function smallModels({ tasks: most, longest }: Shape): fc.Arbitrary<PlanModel> {
  const resource = (id: string) =>
    fc.record({
      id: fc.constant(id),
      capacity: fc.integer({ min: 1, max: 2 }),
      open: fc.option(openings(longest), { nil: undefined }),
    });
  const task = (at: number) =>
    fc.record({
      id: fc.constant(`t${at}`),
      duration: fc.integer({ min: 0, max: longest }),
      uses: fc.constantFrom<Record<string, number>>({}, { a: 1 }, { a: 1 }, { b: 1 }, { a: 1, b: 1 }),
      after:
        at === 0
          ? fc.constant([])
          : fc.uniqueArray(
              fc.record({
                task: fc.integer({ min: 0, max: at - 1 }).map((n) => `t${n}`),
                lag: fc.integer({ min: 0, max: 2 }),
              }),
              { maxLength: 2, selector: (one) => one.task },
            ),
      release: fc.constantFrom(0, 0, 1, 3),
      due: fc.option(fc.integer({ min: 0, max: 8 }), { nil: undefined }),
      weight: fc.integer({ min: 0, max: 3 }),
      splittable: fc.boolean(),
    });
  return fc
    .record({
      resources: fc.tuple(resource("a"), resource("b")),
      tasks: fc
        .integer({ min: 1, max: most })
        .chain((count) => fc.tuple(...Array.from({ length: count }, (_, at) => task(at)))),
      objective: fc.constantFrom("makespan" as const, "weighted-tardiness" as const),
      isHeld: fc.boolean(),
    })
    .map(({ isHeld, ...model }) => ({ ...model, holds: isHeld ? holdsIn(model) : [] }));
}

/** Open for a while, closed for a while, and at last open for good. */
function openings(longest: number) {
  return fc
    .array(fc.tuple(fc.integer({ min: longest, max: longest + 2 }), fc.integer({ min: 1, max: 3 })), {
      maxLength: 2,
    })
    .map((pairs) => {
      let at = 0;
      const spans: [number, number][] = [];
      for (const [open, closed] of pairs) {
        spans.push([at, at + open]);
        at += open + closed;
      }
      return [...spans, [at, at + 1_000] as [number, number]];
    });
}

/** A hold over each arc from a task to the one that waits for it, as far as it is the only one. */
function holdsIn({ tasks }: Pick<PlanModel, "tasks">): PlanModel["holds"] {
  const last = tasks.findLast(({ after = [] }) => after.length > 0);
  const from = last?.after?.[0]?.task;
  return last && from ? [{ resource: "a", from, to: last.id }] : [];
}
