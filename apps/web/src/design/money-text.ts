/**
 * An exact amount as text: "$36,169.65". The amount is in minor units; how many decimals they make is the
 * currency's (ISO 4217, as the runtime's tables have it). Goes through a decimal string, never a float.
 */
export function moneyText(minor: bigint | number, currency: string, signed = false): string {
  const format = new Intl.NumberFormat("en-AU", {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
    signDisplay: signed ? "exceptZero" : "negative",
  });
  const decimals = format.resolvedOptions().maximumFractionDigits ?? 2;
  const amount = BigInt(minor);
  const digits = (amount < 0n ? -amount : amount).toString().padStart(decimals + 1, "0");
  const whole = digits.slice(0, digits.length - decimals);
  const part = digits.slice(digits.length - decimals);
  // The decimal string is exact; TypeScript's type for it wants a literal pattern.
  const exact = `${amount < 0n ? "-" : ""}${whole}${part && `.${part}`}` as `${number}`;
  return format.format(exact).replace("-", "\u2212");
}
