import { describe, expect, test, vi } from "vitest";
import { countPlaywright, countVitest } from "./count-results.mjs";

vi.spyOn(console, "error").mockImplementation(() => {});

const file = (statuses: string[], status = "passed") => ({
  status,
  assertionResults: statuses.map((each) => ({ status: each, fullName: each })),
});

describe("the sum of a test run", () => {
  test("counts what passed and what failed over all files", () => {
    const report = { testResults: [file(["passed", "failed"], "failed"), file(["passed"])] };
    expect(countVitest(report)).toEqual({ passed: 2, failed: 1 });
  });

  test.each(["pending", "skipped", "todo", "disabled"])("fails for a test that is %s", (status) => {
    expect(countVitest({ testResults: [file(["passed", status])] })).toEqual({ passed: 1, failed: 1 });
  });

  test("fails for a file that could not be loaded", () => {
    expect(countVitest({ testResults: [file(["passed"]), file([], "failed")] })).toEqual({
      passed: 1,
      failed: 1,
    });
  });

  test("fails for a file whose hooks failed after its tests passed", () => {
    expect(countVitest({ testResults: [file(["passed"], "failed")] })).toEqual({ passed: 1, failed: 1 });
  });

  test("fails when there was nothing to run", () => {
    expect(countVitest({ testResults: [] })).toEqual({ passed: 0, failed: 1 });
    expect(countVitest({})).toEqual({ passed: 0, failed: 1 });
    expect(countPlaywright({})).toEqual({ passed: 0, failed: 1 });
  });

  test("fails for browser tests that were skipped, that wavered, or that had no service", () => {
    const stats = { expected: 5, unexpected: 1, flaky: 1, skipped: 1 };
    expect(countPlaywright({ stats, errors: ["no service"] })).toEqual({ passed: 5, failed: 4 });
  });
});
