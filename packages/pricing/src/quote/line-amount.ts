import {
  coefficientAt,
  compareDecimals,
  exactDecimal,
  ImpossibleInputError,
  type MinorUnits,
  minorUnits,
  multiplyDecimals,
  roundedQuotient,
  subtractDecimals,
  ZERO,
} from "@buildproof/units";
import type { QuoteLine } from "./quote-lines";

const MOST_DECIMALS = 6;
const HUNDRED = exactDecimal(100);

/** quantity × price × (1 − discount), worked out exactly and rounded once, halves towards plus infinity. */
export function lineAmount(line: QuoteLine, path: string): MinorUnits {
  const quantity = exactDecimal(line.quantity);
  if (
    quantity.scale > MOST_DECIMALS &&
    coefficientAt(quantity, quantity.scale) % 10n ** BigInt(quantity.scale - MOST_DECIMALS) !== 0n
  ) {
    throw new ImpossibleInputError(
      "too-many-decimals",
      `A quantity has at most ${MOST_DECIMALS} decimals: round ${line.quantity}.`,
      `${path}.quantity`,
    );
  }
  const discount = exactDecimal(line.discountPct ?? 0);
  if (compareDecimals(discount, ZERO) < 0 || compareDecimals(discount, HUNDRED) > 0) {
    throw new ImpossibleInputError(
      "discount-out-of-range",
      `A line discount is between 0 and 100 per cent, not ${line.discountPct}.`,
      `${path}.discountPct`,
    );
  }
  const price = exactDecimal(line.unitPriceMinor);
  const exact = multiplyDecimals(multiplyDecimals(quantity, price), subtractDecimals(HUNDRED, discount));
  return minorUnitsOrRefusal(roundedQuotient(exact.coefficient, 100n * 10n ** BigInt(exact.scale)), path);
}

export function minorUnitsOrRefusal(amount: bigint, path: string): MinorUnits {
  if (amount > BigInt(Number.MAX_SAFE_INTEGER) || amount < BigInt(Number.MIN_SAFE_INTEGER)) {
    throw new ImpossibleInputError(
      "amount-too-large",
      "This amount is too large to be held exactly: check quantity and price.",
      path,
    );
  }
  return minorUnits(amount);
}
