import {
  coefficientAt,
  currencyDecimals,
  exactDecimal,
  type MinorUnits,
  minorUnits,
  multiplyDecimals,
  roundedQuotient,
} from "@buildproof/units";
import type { EInvoice, EInvoiceLine } from "./e-invoice";

/**
 * What comes off a line: quantity times price, rounded to the minor unit, less what the line comes to. Zero where
 * the two are the same; less than zero where the line comes to more than its price says.
 */
export function lineAllowance(line: EInvoiceLine, currency: EInvoice["currency"]): MinorUnits {
  const exact = multiplyDecimals(exactDecimal(line.quantity), exactDecimal(line.unitPrice));
  const decimals = currencyDecimals(currency);
  const full =
    exact.scale <= decimals
      ? coefficientAt(exact, decimals)
      : roundedQuotient(exact.coefficient, 10n ** BigInt(exact.scale - decimals));
  return minorUnits(full - BigInt(line.netMinor));
}
