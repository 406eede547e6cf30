import { describe, expect, test } from "vitest";
import { typedAmount } from "./typed-amount";

describe("an amount as it is typed", () => {
  test.each([
    ["3500", 350_000n],
    ["3,500.05", 350_005n],
    ["$1,234.8", 123_480n],
    ["$ 145.00", 14_500n],
    ["0.1", 10n],
    ["1 000.00", 100_000n],
    ["1000000", 100_000_000n],
  ])("%s", (typed, minor) => {
    expect(typedAmount(typed, "AUD")).toBe(minor);
  });

  test.each(["", "free", "12.345", "-5", "1e3", "1,5", "1000000.01", "12 34", "NaN"])(
    "refuses %s",
    (typed) => {
      expect(typedAmount(typed, "AUD")).toBeNull();
    },
  );

  test("a currency with three decimals takes three, one without takes none (ISO 4217)", () => {
    expect(typedAmount("1.005", "BHD")).toBe(1_005n);
    expect(typedAmount("1.5", "JPY")).toBeNull();
  });
});
