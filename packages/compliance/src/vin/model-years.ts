const YEAR_CODES = "ABCDEFGHJKLMNPRSTVWXY123456789";
const FIRST_CYCLE = 1980;
const CYCLE_YEARS = 30;

/**
 * Model years that position 10 may stand for, 1980 to 2039. In North America position 7 tells the
 * cycle: a digit the first, a letter the second (light vehicles).
 *
 * @source  49 CFR 565.15, Table VII (the table from memory; position 7 from the 2008 final rule).
 * @vectors shared/reference/vin.json
 */
export function modelYears(vin: string): readonly number[] {
  const index = YEAR_CODES.indexOf(vin.charAt(9));
  if (index < 0) return [];
  const first = FIRST_CYCLE + index;
  const both = [first, first + CYCLE_YEARS];
  if (!isNorthAmerican(vin)) return both;
  return /\d/.test(vin.charAt(6)) ? both.slice(0, 1) : both.slice(1);
}

/** Only there does the law fix check digit and year code. */
export function isNorthAmerican(vin: string): boolean {
  return /^[1-5]/.test(vin);
}
