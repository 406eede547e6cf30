import { describe, expect, test } from "vitest";
import { limitRange, limitSentence, readNumber } from "./read-number";

describe("a number as people type it", () => {
  test.each([
    ["1940", "1940"],
    ["1,940.50", "1940.50"],
    ["24 310", "24310"],
    [" 0.55 ", "0.55"],
    [".5", ".5"],
    ["\u22124", "-4"],
  ])("%s is read as %s, digit for digit", (typed, text) => {
    expect(readNumber(typed)).toMatchObject({ ok: true, text });
  });

  test.each(["", "12,5", "1,94", "9o", "1.2.3", "NaN", "Infinity", "1e9", "--4"])(
    "%s is refused in words",
    (typed) => {
      const read = readNumber(typed);
      expect(read.ok).toBe(false);
      if (!read.ok) expect(read.sentence).toMatch(/\.$/);
    },
  );
});

describe("limits on the job card", () => {
  const limits = { low: 85, high: 95 };
  test("are said before anything is typed", () => {
    expect(limitRange(limits, "N·m")).toBe("85 to 95 N·m");
    expect(limitRange({ high: 40 }, "kPa")).toBe("at most 40 kPa");
  });

  test("are judged in words as the value is typed, their ends included", () => {
    expect(limitSentence("85", limits, "N·m")).toBe("Within limits.");
    expect(limitSentence("95", limits, "N·m")).toBe("Within limits.");
    expect(limitSentence("84.9", limits, "N·m")).toBe("Below the limit of 85 N·m.");
    expect(limitSentence("96", limits, "N·m")).toBe("Above the limit of 95 N·m.");
    expect(limitSentence("", limits, "N·m")).toBeNull();
  });
});
