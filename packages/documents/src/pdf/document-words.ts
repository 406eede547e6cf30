import { type CurrencyCode, formatMoney, minorUnits } from "@buildproof/units";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** "2025-12-18" as "18 December 2025". */
export function dateInWords(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  const name = months[Number(month) - 1];
  if (name === undefined) throw new RangeError(`A document's date is written YYYY-MM-DD, not "${date}".`);
  return `${Number(day)} ${name} ${year}`;
}

export function moneyInWords(minor: number, currency: CurrencyCode): string {
  return formatMoney(minorUnits(minor), currency);
}

/** "24,310"; a thin grouping that reads alike in every locale the workshop prints in. */
export function wholeNumber(value: number): string {
  return Math.round(value)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, ",");
}

/** At most the given decimals, without trailing zeros. */
export function figure(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
