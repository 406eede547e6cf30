/**
 * Counts a vitest JSON report. Skipped and to-do tests count as failed, and so does a file that
 * failed to load, and a report without any test.
 * @param {{ testResults?: { name?: string, status?: string, message?: string, assertionResults?: { status: string, fullName?: string }[] }[], unhandledErrors?: unknown[] }} report
 * @returns {{ passed: number, failed: number }}
 */
export function countVitest(report) {
  let passed = 0;
  let failed = 0;
  for (const file of report.testResults ?? []) {
    const tests = file.assertionResults ?? [];
    const good = tests.filter((test) => test.status === "passed").length;
    passed += good;
    failed += tests.length - good;
    if (tests.length === 0 || (file.status === "failed" && good === tests.length)) failed += 1;
    for (const test of tests) {
      if (test.status !== "passed" && test.status !== "failed") console.error(`not run: ${test.fullName}`);
    }
  }
  return orOneFailure({ passed, failed });
}

/**
 * Counts a Playwright JSON report by its statistics. Skipped and flaky tests count as failed, and
 * so does an error outside any test.
 * @param {{ stats?: { expected: number, unexpected: number, flaky: number, skipped: number }, errors?: unknown[] }} report
 * @returns {{ passed: number, failed: number }}
 */
export function countPlaywright(report) {
  const { expected = 0, unexpected = 0, flaky = 0, skipped = 0 } = report.stats ?? {};
  if (skipped > 0) console.error(`${skipped} browser tests were not run`);
  return orOneFailure({
    passed: expected,
    failed: unexpected + flaky + skipped + (report.errors?.length ?? 0),
  });
}

function orOneFailure({ passed, failed }) {
  return passed + failed === 0 ? { passed: 0, failed: 1 } : { passed, failed };
}
