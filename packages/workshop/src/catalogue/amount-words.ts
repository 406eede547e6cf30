import type { CapacityAmount } from "../builds/capacity-amount";

/** "40 kg/h", or of a part that takes the place of a standard one: "385 L/h in place of the standard one". */
export function amountWords(amount: CapacityAmount, unit: string): string {
  const whole = typeof amount === "number" ? amount : amount.whole;
  const figure = new Intl.NumberFormat("en-AU", { maximumFractionDigits: 3 }).format(whole);
  const words = `${figure} ${unit}`.trim();
  return typeof amount === "number" ? words : `${words} in place of the standard one`;
}
