import { expect, test } from "vitest";
import { figureText } from "./figure-text";
import { moneyText } from "./money-text";

test.each([
  [3616965n, "AUD", "$36,169.65"],
  [5n, "AUD", "$0.05"],
  [-194000, "AUD", "\u2212$1,940.00"],
  [0n, "AUD", "$0.00"],
  [1234n, "JPY", "¥1,234"],
  // Beyond 2^53 minor units a float would lose the last cents.
  [9007199254740993n, "AUD", "$90,071,992,547,409.93"],
])("%s minor units of %s read %s", (minor, currency, text) => {
  expect(moneyText(minor, currency)).toBe(text);
});

test("a currency of three decimals keeps them all", () => {
  expect(moneyText(1234n, "KWD")).toMatch(/1\.234$/);
});

test("a figure keeps its decimals and marks a gain when asked", () => {
  expect(figureText(11400)).toBe("11,400");
  expect(figureText(62, 1)).toBe("62.0");
  expect(figureText(-4.04, 1)).toBe("\u22124.0");
  expect(figureText(186.4, 0, true)).toBe("+186");
});
