import { expect, test } from "vitest";
import { jobCan, mayMove } from "./job-states";
import { type JobStatus, jobStatuses } from "./job-status";

test("a vehicle that was handed over is never booked, worked on or stopped again", () => {
  expect(jobStatuses.filter((to) => mayMove("handedOver", to))).toEqual([]);
});

test("keys are handed over from ready only", () => {
  expect(jobStatuses.filter((from) => mayMove(from, "handedOver"))).toEqual(["ready"]);
});

test("work starts only on a vehicle that was checked in", () => {
  const before: readonly JobStatus[] = ["waiting", "booked"];
  for (const from of before) expect(mayMove(from, "inWork")).toBe(false);
  expect(mayMove("checkedIn", "inWork")).toBe(true);
});

test("every state can be reached from waiting, and every state but the last can be stopped", () => {
  const reached = new Set<JobStatus>(["waiting"]);
  for (const from of reached) for (const to of jobCan[from]) reached.add(to);
  expect([...reached].sort()).toEqual([...jobStatuses].sort());
  for (const from of jobStatuses) {
    if (from !== "handedOver" && from !== "stopped") expect(mayMove(from, "stopped")).toBe(true);
  }
});
