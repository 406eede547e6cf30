import { expect, test } from "vitest";
import { firstDraft, withNewBlock, withPlace } from "./booking-draft";

const hoist = { id: "h1", kind: "hoist", name: "Hoist 1", note: "" } as const;
const place = { resource: hoist, startsAt: "2026-12-08T09:00", endsAt: "2026-12-08T13:00" };

test("a draft asks for hoist, technician and dyno, and proposes the job's own work for each", () => {
  const draft = firstDraft("2026-12-08", [
    { name: "Pre-build inspection", place: "hoist", stage: "inspection" },
    { name: "Fit the blower", place: "hoist", stage: "fitting" },
    { name: "Calibrate on the dyno", place: "dyno", stage: "calibration" },
  ]);
  expect(draft.map(({ kind, work }) => [kind, work])).toEqual([
    ["hoist", "Fit the blower"],
    ["person", "Fit the blower"],
    ["dyno", "Calibrate on the dyno"],
  ]);
});

test("a place on the plan fills the free row of its kind, and moves it when pointed at again", () => {
  const once = withPlace(firstDraft("2026-12-08", []), place);
  expect(once[0]).toMatchObject({ resourceId: "h1", startsAt: "2026-12-08T09:00" });
  const twice = withPlace(once, { ...place, startsAt: "2026-12-08T10:00" });
  expect(twice).toHaveLength(3);
  expect(twice[0]).toMatchObject({ startsAt: "2026-12-08T10:00" });
});

test("a second hoist gets a row of its own, and no two rows share a key", () => {
  const first = withPlace(firstDraft("2026-12-08", []), place);
  const second = withNewBlock(withPlace(first, { ...place, resource: { ...hoist, id: "h2" } }));
  expect(second.filter(({ kind }) => kind === "hoist")).toHaveLength(3);
  expect(new Set(second.map(({ key }) => key)).size).toBe(second.length);
});
