import { expect, test } from "vitest";
import { typedBlocks, typedOverrides } from "./typed-booking";

test("only rows that name a resource are booked, and only points with a reason are overridden", () => {
  const form = new FormData();
  for (const [key, resourceId] of [
    ["0", "h1"],
    ["1", ""],
    ["5", "d1"],
  ] as const) {
    form.set(`resourceId.${key}`, resourceId);
    form.set(`startsAt.${key}`, "2026-12-08T08:00");
    form.set(`endsAt.${key}`, "2026-12-08T16:00");
    form.set(`work.${key}`, `Work ${key}`);
  }
  form.set("override.deposit", "Paid on Monday, the bank confirms");
  form.set("override.goods-in", "  ");
  expect(typedBlocks(form).map(({ resourceId, work }) => [resourceId, work])).toEqual([
    ["h1", "Work 0"],
    ["d1", "Work 5"],
  ]);
  expect(typedOverrides(form)).toEqual([{ point: "deposit", reason: "Paid on Monday, the bank confirms" }]);
});
