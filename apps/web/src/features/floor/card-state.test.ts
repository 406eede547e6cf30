import { describe, expect, test } from "vitest";
import { changesThePage, heldAt, newerThanReading, nextIndex, shownSteps, withSaved } from "./card-state";
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
    const saved = withSaved(new Map(), [kept("record-step", "a"), kept("reopen-step", "b")], 0);
    const steps = shownSteps([step("a"), step("b", { state: "done", words: "done" })], [], saved);
    expect(steps).toMatchObject([{ state: "done", isOnDevice: false }, { state: "open" }]);
  });

  test("keeps what a page read a moment ago may not know of, and no longer", () => {
    const saved = withSaved(new Map(), [kept("record-step", "a"), kept("reopen-step", "b")], 0);
    expect([...newerThanReading(saved, 2_000).keys()]).toEqual(["a"]);
    expect(newerThanReading(saved, 20_000).size).toBe(0);
  });

  test("reads the page anew at once only for what changes more than the step's own line", () => {
    const steps = [step("a"), step("t", { low: 23, high: 27 }), step("d", { state: "done" })];
    const entered = (id: string, input = {}) => kept("record-step", id, { input: { stepId: id, ...input } });
    expect(changesThePage(entered("a"), steps)).toBe(false);
    expect(changesThePage(entered("t", { value: 25 }), steps)).toBe(false);
    expect(changesThePage(entered("t", { value: 22 }), steps)).toBe(true);
    expect(changesThePage(entered("d"), steps)).toBe(true);
    expect(changesThePage(kept("stop-clock", "a"), steps)).toBe(true);
    expect(changesThePage({ ...entered("a"), photo: new File([], "camera.png") }, steps)).toBe(true);
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
