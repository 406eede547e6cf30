import type { JobStatus } from "../jobs/job-status";
import { type CardStep, nextOpen } from "./card-step";
import { isInTheBuilding } from "./working-job";

/** The next thing to do on a job, for whoever looks at the floor. */
export type NextThing = {
  readonly kind: "check-in" | "step" | "hold" | "finish" | "wait";
  readonly words: string;
};

export function whatIsNext(status: JobStatus, steps: readonly CardStep[]): NextThing {
  if (status === "booked") return { kind: "check-in", words: "Check the vehicle in" };
  if (!isInTheBuilding(status)) return { kind: "wait", words: "Nothing on the floor" };
  const step = nextOpen(steps);
  if (!step) return { kind: "finish", words: "Every step is done" };
  if (step.kind === "holdPoint") return { kind: "hold", words: `Hold point: ${step.text}` };
  return { kind: "step", words: step.text };
}
