import type { CardView, StepView } from "./card-view";
import type { FloorEntry } from "./floor-entry";

/** A step as this device knows it: what the workshop said, and what has been pressed since. */
export type ShownStep = StepView & {
  /** Entered here, and not yet at the workshop. */
  readonly isOnDevice: boolean;
};

/** By step: what the workshop has taken since the page was read. */
export type JustSaved = ReadonlyMap<string, FloorEntry["use"]>;

/** Adds what a round has brought to the workshop. */
export function withSaved(before: JustSaved, saved: readonly FloorEntry[]): JustSaved {
  const after = new Map(before);
  for (const { use, input } of saved) {
    if (typeof input.stepId === "string" && use !== "raise-fault") after.set(input.stepId, use);
  }
  return after;
}

/** Lays what is still on the device over what the workshop last said. */
export function shownSteps(
  steps: CardView["steps"],
  waiting: readonly FloorEntry[],
  justSaved: JustSaved,
): readonly ShownStep[] {
  const latest = new Map<string, FloorEntry["use"]>();
  for (const { use, input, refused } of waiting) {
    if (!refused && typeof input.stepId === "string" && use !== "raise-fault") latest.set(input.stepId, use);
  }
  return steps.map((step) => {
    const use = latest.get(step.id);
    if (use === "reopen-step") return { ...step, state: "open", words: "", isOnDevice: true };
    if (use === "record-step")
      return { ...step, state: "done", words: step.words || "entered", isOnDevice: true };
    const saved = justSaved.get(step.id);
    if (saved === "reopen-step") return { ...step, state: "open", words: "", isOnDevice: false };
    if (saved === "record-step" && step.state === "open")
      return { ...step, state: "done", words: "entered", isOnDevice: false };
    return { ...step, isOnDevice: false };
  });
}

/** The unsigned hold point before a step; null where the way is free. */
export function heldAt(steps: readonly ShownStep[], index: number): ShownStep | null {
  return steps.slice(0, index).find(({ kind, state }) => kind === "holdPoint" && state !== "done") ?? null;
}

/** The next open step from here on, then from the top; the last one when nothing is open. */
export function nextIndex(steps: readonly ShownStep[], from: number): number {
  const after = steps.findIndex(({ state }, index) => index >= from && state === "open");
  if (after >= 0) return after;
  const first = steps.findIndex(({ state }) => state === "open");
  return first >= 0 ? first : Math.max(0, steps.length - 1);
}
