import { expect, test } from "vitest";
import { figureWords, isWithin, limitWords } from "./limits";

test.each([
  [{ low: 23, high: 27, unit: "N·m" }, "23 to 27 N·m"],
  [{ low: -1, high: 2, unit: "mm" }, "−1 to 2 mm"],
  [{ low: 90, high: 90, unit: "N·m" }, "90 N·m"],
  [{ low: 13.2, high: null, unit: "V" }, "at least 13.2 V"],
  [{ low: null, high: 0.5, unit: "°" }, "at most 0.5°"],
  [{ low: null, high: null, unit: "km" }, "any km"],
])("limits of %o read %s", (limits, words) => {
  expect(limitWords(limits)).toBe(words);
});

test("a figure keeps its decimals, and its thousands apart", () => {
  expect(figureWords(24_310, "km")).toBe("24,310 km");
  expect(figureWords(0.125, "mm")).toBe("0.125 mm");
});

test("a figure on its limit is within", () => {
  const torque = { low: 23, high: 27, unit: "N·m" };
  expect([22.99, 23, 27, 27.01].map((value) => isWithin(value, torque))).toEqual([false, true, true, false]);
});
