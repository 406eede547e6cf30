import { type Plan, planInSteps } from "@buildproof/planning";
import { z } from "zod";
import { calculation } from "../calculation";
import { identifier } from "./decimal";

/** How long other requests of the same thread wait at most while one is planned. */
const SLICE_MS = 20;
const LATEST = 2 ** 40;
const WHOLE = `write a whole number from 0 to ${LATEST}`;

const instant = z.int({ error: WHOLE }).min(0, { error: WHOLE }).max(LATEST, { error: WHOLE });
const count = z
  .int({ error: WHOLE })
  .min(0, { error: WHOLE })
  .max(1_000_000, { error: "write at most 1000000" });
const span = z
  .tuple([z.int().min(-LATEST).max(LATEST), z.int().min(-LATEST).max(LATEST)])
  .refine(([from, to]) => from <= to, { error: "write the beginning of an open span before its end" });
const times = z.record(identifier, z.number());

const input = z.strictObject({
  resources: z.array(z.strictObject({ id: identifier, capacity: count, open: z.array(span).optional() })),
  tasks: z.array(
    z.strictObject({
      id: identifier,
      duration: instant,
      uses: z.record(identifier, count).optional(),
      after: z.array(z.strictObject({ task: identifier, lag: instant.optional() })).optional(),
      release: instant.optional(),
      due: instant.nullable().optional(),
      weight: count.optional(),
      splittable: z.boolean().optional(),
    }),
  ),
  holds: z
    .array(
      z.strictObject({
        resource: identifier,
        units: count.optional(),
        from: identifier,
        to: identifier,
        tasks: z.array(identifier).optional(),
      }),
    )
    .optional(),
  fixed: z.record(identifier, z.int({ error: WHOLE })).optional(),
  objective: z.enum(["makespan", "weighted-tardiness"]).optional(),
  effort: z
    .union([
      z.strictObject({ schedules: z.int().min(1).max(100_000_000) }),
      z.strictObject({ ms: z.int().min(1).max(600_000) }),
    ])
    .optional(),
  seed: z.int().min(0).max(4_294_967_295).optional(),
});

export const planCalculation = calculation({
  summary: "A plan over resources, hours and precedence by its end or weighted lateness, with a lower bound",
  isTimed: true,
  input,
  output: z.strictObject({
    start: times,
    end: times,
    objective: z.number(),
    lowerBound: z.number(),
    provenOptimal: z.boolean(),
    schedules: z.number(),
    ms: z.number(),
  }),
  run: async ({ effort, seed, tasks, ...model }, { withinMs, cancelled }) => {
    const begun = performance.now();
    const limitMs = effort && "ms" in effort ? effort.ms : (withinMs ?? Number.POSITIVE_INFINITY);
    const isCancelled = (): boolean => cancelled?.aborted ?? false;
    const steps = planInSteps(
      { ...model, tasks: tasks.map(({ due, ...task }) => ({ ...task, due: due ?? undefined })) },
      {
        schedules: effort && "ms" in effort ? Number.MAX_SAFE_INTEGER : effort?.schedules,
        seed,
        stopped: () => isCancelled() || performance.now() - begun >= limitMs,
      },
    );
    const plan = await inSlices(steps);
    return { ...plan, ms: Math.round(performance.now() - begun) };
  },
});

/** Runs the search and lets whatever else the thread has to do go between. */
async function inSlices(steps: Generator<void, Plan>): Promise<Plan> {
  for (let until = performance.now() + SLICE_MS; ; ) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() < until) continue;
    await new Promise((resolve) => setImmediate(resolve));
    until = performance.now() + SLICE_MS;
  }
}
