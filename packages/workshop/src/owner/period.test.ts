import { expect, test } from "vitest";
import { periodStart } from "./period";

const adelaide = "Australia/Adelaide";

// Summer time of South Australia begins on the first Sunday of October: 4 October 2026 (UTC+9:30 to UTC+10:30).
test("ninety days begin at midnight of the workshop's clock, on the other side of a change of the clock too", () => {
  const now = new Date("2026-11-24T22:30:00Z"); // Wednesday 25 November, 09:00
  expect(periodStart("90-days", now, adelaide)).toEqual(new Date("2026-08-26T14:30:00Z")); // 27 August, 00:00
});

test("twelve months before 29 February begin on 28 February", () => {
  const now = new Date("2028-02-28T20:00:00Z"); // 29 February, 06:30
  expect(periodStart("12-months", now, adelaide)).toEqual(new Date("2027-02-27T13:30:00Z"));
});

test("all leaves nothing out", () => {
  expect(periodStart("all", new Date("2026-11-24T22:30:00Z"), adelaide)).toEqual(new Date(0));
});
