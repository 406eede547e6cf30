import { expect, test } from "vitest";
import { measure, median } from "./benchmark";

test("the median is the middle, or the mean of the two in the middle", () => {
  expect(median([9, 1, 5])).toBe(5);
  expect(median([8, 1, 4, 2])).toBe(3);
});

test("work that is three times as much takes about three times as long as its baseline", async () => {
  const spin = (times: number) => () => {
    let sum = 0;
    for (let at = 0; at < times; at += 1) sum += Math.sqrt(at);
    return sum;
  };
  const measured = await measure({
    name: "spinning",
    ours: { name: "three", run: spin(300_000) },
    baseline: { name: "one", run: spin(100_000) },
  });
  expect(measured.ratio).toBeGreaterThan(1.5);
  expect(measured.ratio).toBeLessThan(6);
});
