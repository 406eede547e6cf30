type Limits = { readonly low: number | null; readonly high: number | null; readonly unit: string };

/** Both limits inclusive; a step without limits takes any figure. */
export function isWithin(value: number, { low, high }: Limits): boolean {
  return (low === null || value >= low) && (high === null || value <= high);
}

/** The limits as the card has them: "23 to 27 N·m". */
export function limitWords({ low, high, unit }: Limits): string {
  if (low !== null && high !== null) return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`;
  if (low !== null) return `at least ${low} ${unit}`;
  return high === null ? `any ${unit}` : `at most ${high} ${unit}`;
}
