import { ImpossibleInputError } from "@buildproof/units";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PlanModel } from "../model/plan-question";
import { plan } from "../plan";
import { smallModels } from "../testing/small-models";
import { violations } from "../testing/violations";
import { type Disruption, disrupted } from "./disruption";
import { repairs } from "./repair";
import { doneBefore } from "./with-begun";

const model: PlanModel = {
  resources: [
    { id: "hoist", capacity: 1 },
    { id: "dyno", capacity: 1 },
  ],
  tasks: [
    { id: "a-fit", duration: 4, uses: { hoist: 1 }, due: 4 },
    { id: "b-fit", duration: 3, uses: { hoist: 1 }, due: 9 },
    { id: "b-proof", duration: 2, uses: { dyno: 1 }, after: [{ task: "b-fit" }], due: 10 },
    { id: "c-fit", duration: 2, uses: { hoist: 1 }, due: 20 },
  ],
};
const start = { "a-fit": 0, "b-fit": 4, "b-proof": 7, "c-fit": 10 };

describe("a repair", () => {
  test("without any disruption moves nothing", () => {
    const found = repairs({ model, start, now: 0, disruptions: [] });
    expect(found.map(({ moves }) => moves)).toEqual([[]]);
  });

  test("of a delay within the free time moves that task alone", () => {
    const disruptions: Disruption[] = [{ kind: "part-late", task: "b-proof", release: 8 }];
    const [best] = repairs({ model, start, now: 0, disruptions });
    expect(best?.moves).toEqual([{ task: "b-proof", fromStart: 7, toStart: 8, fromEnd: 9, toEnd: 10 }]);
  });

  test("of a late part keeps the others in place, or their order, each with its lateness", () => {
    const disruptions: Disruption[] = [{ kind: "part-late", task: "b-fit", release: 8 }];
    const found = repairs({ model, start, now: 0, disruptions });
    const [fewest, ordered] = ["fewest-moves", "same-order"].map((way) =>
      found.find((each) => each.way === way),
    );
    // Behind the last on the hoist: 12 to 15 and 15 to 17, so 6 and 7 late.
    expect(fewest).toMatchObject({
      start: { "b-fit": 12, "b-proof": 15, "c-fit": 10 },
      lateness: 13,
      latenessBefore: 0,
    });
    // Before it: 8 to 11 and 11 to 13, so 2 and 3 late, and the other is moved.
    expect(ordered).toMatchObject({ start: { "b-fit": 8, "b-proof": 11, "c-fit": 11 }, lateness: 5 });
    expect(fewest?.moves).toHaveLength(2);
    expect(ordered?.moves).toHaveLength(3);
  });

  test("of work under way that runs over leaves its start and pushes what follows", () => {
    const disruptions: Disruption[] = [{ kind: "overrun", task: "a-fit", duration: 6 }];
    const [best] = repairs({ model, start, now: 3, disruptions });
    expect(best?.start).toMatchObject({ "a-fit": 0, "b-fit": 6, "b-proof": 9 });
  });

  test("begins again what may not pause and lost its machine", () => {
    const disruptions: Disruption[] = [{ kind: "away", resource: "hoist", from: 2, to: 5 }];
    const [best] = repairs({ model, start, now: 2, disruptions });
    expect(best?.start["a-fit"]).toBeGreaterThanOrEqual(5);
  });

  test("of any plan holds, and moves nothing that began", () => {
    const happens = (tasks: number): fc.Arbitrary<Disruption> =>
      fc.oneof(
        fc.record({
          kind: fc.constant("part-late" as const),
          task: fc.integer({ min: 0, max: tasks - 1 }).map((at) => `t${at}`),
          release: fc.integer({ min: 0, max: 15 }),
        }),
        fc.record({
          kind: fc.constant("overrun" as const),
          task: fc.integer({ min: 0, max: tasks - 1 }).map((at) => `t${at}`),
          duration: fc.integer({ min: 0, max: 3 }),
        }),
        fc.record({
          kind: fc.constant("away" as const),
          resource: fc.constantFrom("a", "b"),
          from: fc.integer({ min: 0, max: 12 }),
          to: fc.integer({ min: 13, max: 20 }),
        }),
      );
    fc.assert(
      fc.property(
        smallModels({ tasks: 8, longest: 3 }),
        fc.array(happens(1), { minLength: 1, maxLength: 2 }),
        fc.integer({ min: 0, max: 6 }),
        (asked, disruptions, now) => {
          const found = plan(asked, { schedules: 30 });
          for (const repair of repairsOf(asked, found.start, now, disruptions)) {
            const changed = disrupted(asked, disruptions, now);
            const over = doneBefore(asked, found.start, now);
            const begun = asked.tasks.filter(({ id }) => (found.start[id] ?? 0) < now).map(({ id }) => id);
            const released: PlanModel = {
              ...changed,
              tasks: changed.tasks.map((task, at) => ({
                ...task,
                duration: (over.has(task.id) ? asked.tasks[at] : task)?.duration ?? 0,
                release: begun.includes(task.id) ? 0 : task.release,
              })),
            };
            expect(violations(released, repair.start, repair.end)).toEqual([]);
            for (const { id } of asked.tasks) {
              const kept = repair.start[id] === found.start[id];
              expect(kept || (repair.start[id] ?? 0) >= now).toBe(true);
            }
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});

/** Two things that began cannot both have the same hoist when one runs over; such questions are refused and not counted. */
function repairsOf(
  asked: PlanModel,
  begun: Readonly<Record<string, number>>,
  now: number,
  disruptions: readonly Disruption[],
) {
  try {
    return repairs({ model: asked, start: begun, now, disruptions }, { schedules: 20 });
  } catch (error) {
    const isContradiction =
      error instanceof ImpossibleInputError && ["broken-fixed", "no-room"].includes(error.code);
    fc.pre(!isContradiction);
    throw error;
  }
}
