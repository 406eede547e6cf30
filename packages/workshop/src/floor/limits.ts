type Limits = { readonly low: number | null; readonly high: number | null; readonly unit: string };

/** Both limits inclusive; a step without limits takes any figure. */
export function isWithin(value: number, { low, high }: Limits): boolean {
  return (low === null || value >= low) && (high === null || value <= high);
}

/** The limits as the card has them: "23 to 27 N·m". */
export function limitWords({ low, high, unit }: Limits): string {
  if (low !== null && high !== null) {
    return low === high ? figureWords(low, unit) : `${figureWords(low)} to ${figureWords(high, unit)}`;
  }
  if (low !== null) return `at least ${figureWords(low, unit)}`;
  return high === null ? `any ${unit}` : `at most ${figureWords(high, unit)}`;
}

/**
 * A figure as the floor reads it, thousands apart, no more decimals than were entered: "24,310 km", "−0.5°".
 * Degrees of angle stand close to their figure, every other unit apart (SI Brochure, 9th edition, 5.4.3).
 */
export function figureWords(value: number, unit = ""): string {
  const figure = value.toLocaleString("en-AU", { maximumFractionDigits: 6 }).replace("-", "−");
  return unit === "°" ? `${figure}°` : `${figure} ${unit}`.trim();
}
