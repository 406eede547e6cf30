import { expect, test } from "vitest";
import { importMemory } from "./import-memory";

// How much memory is judged by `npm run bench`, not here.
test("the benchmark's million rows are imported, reduced and corrected", { timeout: 120_000 }, () => {
  const { points, peakMb } = importMemory();
  // Ten runs from 2,000 to 6,000 rpm on a grid of 50 rpm, without the first or last where a bin is cut.
  expect(points).toBeGreaterThanOrEqual(10 * 79);
  expect(peakMb).toBeGreaterThan(20);
});
