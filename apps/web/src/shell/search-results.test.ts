import { expect, test } from "vitest";
import { linesOf, stepThrough } from "./search-results";

test("the lines run through the groups and end with what can be made new", () => {
  const lines = linesOf({
    groups: [
      { kind: "vehicle", label: "Vehicles", hits: [{ id: "7", title: "1AB 2CD", href: "/vehicles/7" }] },
      { kind: "job", label: "Jobs", hits: [{ id: "7", title: "Job 318", href: "/jobs/7" }] },
    ],
    offers: [{ title: "New vehicle 1AB 2CE", href: "/vehicles/new?plate=1AB2CE" }],
  });
  expect(lines.map((line) => line.href)).toEqual(["/vehicles/7", "/jobs/7", "/vehicles/new?plate=1AB2CE"]);
  expect(new Set(lines.map((line) => line.key)).size).toBe(3);
});

test("the arrows go round, and start at the near end", () => {
  expect(stepThrough(3, null, 1)).toBe(0);
  expect(stepThrough(3, null, -1)).toBe(2);
  expect(stepThrough(3, 2, 1)).toBe(0);
  expect(stepThrough(3, 0, -1)).toBe(2);
  expect(stepThrough(0, null, 1)).toBeNull();
});
