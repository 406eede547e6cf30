import { expect, test } from "vitest";
import { withoutRecorded } from "./inspection-visit";

const inspect = { code: "inspect", stage: "inspection", place: "hoist" };
const baseline = { code: "baseline", stage: "inspection", place: "dyno" };
const fit = { code: "fit", stage: "fitting", place: "hoist" };
const codes = (operations: readonly { readonly code: string }[]) => operations.map(({ code }) => code);

test("an inspection on record leaves its steps off the card, and the baseline on it", () => {
  const visit = { inspected: true, measured: false };
  expect(codes(withoutRecorded([inspect, baseline, fit], visit))).toEqual(["baseline", "fit"]);
});

test("a baseline on record leaves its steps off the card", () => {
  const visit = { inspected: true, measured: true };
  expect(codes(withoutRecorded([inspect, baseline, fit], visit))).toEqual(["fit"]);
});

test("a job that is nothing but the visit keeps it", () => {
  const visit = { inspected: true, measured: true };
  expect(codes(withoutRecorded([inspect, baseline], visit))).toEqual(["inspect", "baseline"]);
});
