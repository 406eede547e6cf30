import type { CardView, StepView } from "./card-view";
import type { FloorEntry } from "./floor-entry";

/** A step as this device knows it: what the workshop said, and what has been pressed since. */
export type ShownStep = StepView & {
  /** Entered here, and not yet at the workshop. */
  readonly isOnDevice: boolean;
};

/** By step: what the workshop has taken since the page was read, and when by this device's clock. */
export type JustSaved = ReadonlyMap<string, { readonly use: FloorEntry["use"]; readonly atMs: number }>;

/** Adds what a round has brought to the workshop. */
export function withSaved(before: JustSaved, saved: readonly FloorEntry[], atMs: number): JustSaved {
  const after = new Map(before);
  for (const { use, input } of saved) {
    if (typeof input.stepId === "string" && use !== "raise-fault") after.set(input.stepId, { use, atMs });
  }
  return after;
}

/** A page that comes now may have been read this long ago. */
const READING_MS = 10_000;

/** What the page just read may not know of yet. */
export function newerThanReading(before: JustSaved, nowMs: number): JustSaved {
  return new Map(
    [...before].filter(([, { use, atMs }]) => use === "record-step" && nowMs - atMs < READING_MS),
  );
}

/** Whether an entry changes more of the page than its own line: a fault, a photo, the clock, a step undone. */
export function changesThePage({ use, input, photo }: FloorEntry, steps: CardView["steps"]): boolean {
  if (use !== "record-step" || photo) return true;
  const step = steps.find(({ id }) => id === input.stepId);
  if (step?.state !== "open") return true;
  const { value } = input;
  if (typeof value !== "number") return false;
  return (step.low !== null && value < step.low) || (step.high !== null && value > step.high);
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
    const saved = justSaved.get(step.id)?.use;
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
