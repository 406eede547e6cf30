import { expect, test } from "vitest";
import { learning } from "./job-times";

// First, third and tenth of a kind: common practice, no source.
test("the first job of a kind takes 1.6 times its hours, the third 1.2, the tenth as long as quoted", () => {
  expect(learning(1)).toBeCloseTo(1.6, 10);
  expect(learning(3)).toBeCloseTo(1.2, 10);
  expect(learning(10)).toBe(1);
  expect(learning(40)).toBe(1);
});

test("practice never makes a job slower", () => {
  for (let n = 1; n < 15; n += 1) expect(learning(n + 1)).toBeLessThanOrEqual(learning(n));
});
