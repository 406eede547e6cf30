import { describe, expect, test } from "vitest";
import { heldAt, nextIndex, shownSteps, withSaved } from "./card-state";
import type { StepView } from "./card-view";
import type { FloorEntry } from "./floor-entry";

const step = (id: string, more: Partial<StepView> = {}): StepView => ({
  id,
  operation: "Fit the pump",
  text: id,
  kind: "tick",
  unit: "",
  low: null,
  high: null,
  target: null,
  limits: "",
  cautions: [],
  oneUsePart: "",
  isForSignatory: false,
  state: "open",
  words: "",
  by: "",
  at: "",
  note: "",
  photos: [],
  ...more,
});

const kept = (use: FloorEntry["use"], stepId: string, more: Partial<FloorEntry> = {}): FloorEntry => ({
  key: `${use} ${stepId}`,
  use,
  input: { stepId },
  personId: "tilda",
  jobId: "job",
  label: "",
  madeAt: "2026-11-25T09:00:00Z",
  ...more,
});

describe("a card on a device", () => {
  test("counts what is still on the device as entered, and says that it is only there", () => {
    const [a, b] = shownSteps([step("a"), step("b")], [kept("record-step", "a")], new Map());
    expect(a).toMatchObject({ state: "done", isOnDevice: true });
    expect(b).toMatchObject({ state: "open", isOnDevice: false });
  });

  test("shows a step that was undone on the device as open", () => {
    const waiting = [kept("record-step", "a"), kept("reopen-step", "a")];
    expect(shownSteps([step("a")], waiting, new Map())[0]).toMatchObject({ state: "open" });
  });

  test("does not count what the workshop refused", () => {
    const waiting = [kept("record-step", "a", { refused: "Stop." })];
    expect(shownSteps([step("a")], waiting, new Map())[0]).toMatchObject({ state: "open" });
  });

  test("counts what the workshop has just taken, before the page is read anew", () => {
    const saved = withSaved(new Map(), [kept("record-step", "a"), kept("reopen-step", "b")]);
    const steps = shownSteps([step("a"), step("b", { state: "done", words: "done" })], [], saved);
    expect(steps).toMatchObject([{ state: "done", isOnDevice: false }, { state: "open" }]);
  });

  test("lets nothing past an unsigned hold point, whatever is on the device", () => {
    const steps = shownSteps(
      [step("a"), step("hold", { kind: "holdPoint" }), step("b")],
      [kept("record-step", "a")],
      new Map(),
    );
    expect(heldAt(steps, 2)?.id).toBe("hold");
    expect(heldAt(steps, 1)).toBeNull();
  });

  test("goes on to the next open step, then back to what was left out", () => {
    const steps = shownSteps([step("a"), step("b", { state: "done" }), step("c")], [], new Map());
    expect(nextIndex(steps, 1)).toBe(2);
    expect(nextIndex(steps, 3)).toBe(0);
  });
});
