import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDecimals,
  compareDecimals,
  decimalText,
  decimalToNumber,
  exactDecimal,
  multiplyDecimals,
  subtractDecimals,
} from "./exact-decimal";

const decimals = fc.record({ digits: fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), scale: fc.nat(9) });
const asDecimal = ({ digits, scale }: { digits: bigint; scale: number }) => ({ coefficient: digits, scale });

describe("exact decimals", () => {
  test("one tenth and two tenths are three tenths", () => {
    expect(decimalToNumber(addDecimals(exactDecimal(0.1), exactDecimal("0.2")))).toBe(0.3);
  });

  test("a number is read as the decimal that was written", () => {
    expect(decimalText(exactDecimal(1.1))).toBe("1.1");
    expect(decimalText(exactDecimal(1e21))).toBe("1000000000000000000000");
    expect(decimalText(exactDecimal(-2.5e-7))).toBe("-0.00000025");
    expect(decimalText(exactDecimal("007.500"))).toBe("7.5");
  });

  test.each(["", "1,5", "0x10", "NaN", "Infinity", "1e99999", "--1", "1."])(
    "%j is not a decimal",
    (written) => {
      expect(() => exactDecimal(written)).toThrow(RangeError);
    },
  );

  test("what is added can be taken away, and text comes back as the same value", () => {
    fc.assert(
      fc.property(decimals, decimals, (left, right) => {
        const [a, b] = [asDecimal(left), asDecimal(right)];
        expect(compareDecimals(subtractDecimals(addDecimals(a, b), b), a)).toBe(0);
        expect(compareDecimals(exactDecimal(decimalText(a)), a)).toBe(0);
      }),
    );
  });

  test("a product agrees with whole-number arithmetic", () => {
    fc.assert(
      fc.property(decimals, decimals, (left, right) => {
        const product = multiplyDecimals(asDecimal(left), asDecimal(right));
        expect(product.coefficient).toBe(left.digits * right.digits);
        expect(product.scale).toBe(left.scale + right.scale);
      }),
    );
  });
});
