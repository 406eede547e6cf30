import { ImpossibleInputError } from "@buildproof/units";

/** Refuses a value that cannot be meant, naming its field. Ends are included; NaN is outside; an absent value passes. */
export function refuseOutside(value: number | undefined, path: string, least: number, most: number): void {
  if (value === undefined || (value >= least && value <= most)) return;
  throw new ImpossibleInputError(
    "out-of-range",
    `${path} must be between ${least} and ${most}, not ${value}: check the value and its unit.`,
    path,
  );
}
