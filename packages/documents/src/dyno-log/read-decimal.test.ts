import fc from "fast-check";
import { expect, test } from "vitest";
import { readDecimal } from "./read-decimal";

test("a decimal as instruments write it is the number JavaScript reads from it, to the last bit", () => {
  const digits = fc.string({ unit: fc.constantFrom(..."0123456789"), maxLength: 12 });
  fc.assert(
    fc.property(
      fc.constantFrom("", "-", "+"),
      digits,
      fc.constantFrom("", "."),
      digits,
      (sign, a, point, b) => {
        fc.pre(a !== "" || (point !== "" && b !== ""));
        const text = sign + a + point + b;
        expect(readDecimal(text, false)).toBe(Number(text));
      },
    ),
    { numRuns: 2_000 },
  );
});

test.each(["", "-", ".", "-.", "1.2.3", "1-2", "--1", "0x1F", "1,5", "1 2", "twelve"])(
  "%j is no number",
  (text) => {
    expect(readDecimal(text, false)).toBe("text");
  },
);

test("exponents, spaces around and a decimal comma are read the long way", () => {
  expect(readDecimal(" 12.5 ", false)).toBe(12.5);
  expect(readDecimal("1.5e3", false)).toBe(1500);
  expect(readDecimal("12,5", true)).toBe(12.5);
  const long = "123456789012345678901.5";
  expect(readDecimal(long, false)).toBe(Number(long));
});
