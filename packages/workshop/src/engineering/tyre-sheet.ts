import type { ChassisItem, Tyres } from "./chassis-build";
import { type ChassisFinding, oneDecimal } from "./finding";
import { tyreFindings } from "./tyre-findings";
import { type TyreDuty, type TyreLine, tyreLine } from "./tyre-line";

export type TyreSheet = {
  readonly standard: TyreLine;
  readonly fitted: TyreLine;
  readonly isChanged: boolean;
  readonly diameterChangePct: number;
  readonly rideHeightRiseMm: number;
  readonly change: string;
  readonly findings: readonly ChassisFinding[];
};

/** The tyres before and after, and whether the fitted ones bear the axles and the top speed. */
export function tyreSheet(tyres: Tyres, items: readonly ChassisItem[], duty: TyreDuty): TyreSheet {
  const standard = tyreLine(tyres.standard);
  const fitted = tyreLine(tyres.fitted);
  const growthMm = fitted.overallDiameterMm - standard.overallDiameterMm;
  const diameterChangePct = (100 * growthMm) / standard.overallDiameterMm;
  return {
    standard,
    fitted,
    isChanged: tyres.isChanged,
    diameterChangePct,
    rideHeightRiseMm: growthMm / 2,
    change: changeWords(tyres.isChanged, growthMm, diameterChangePct),
    findings: tyreFindings(standard, fitted, duty, placardOf(items)),
  };
}

function placardOf(items: readonly ChassisItem[]): number | null {
  return items.findLast(({ chassis }) => chassis.tyre?.placardKmh)?.chassis.tyre?.placardKmh ?? null;
}

function changeWords(isChanged: boolean, growthMm: number, changePct: number): string {
  if (!isChanged) return "The standard tyres stay.";
  if (growthMm === 0) return "Other tyres of the same diameter.";
  const size = `${oneDecimal(Math.abs(growthMm))} mm ${growthMm > 0 ? "larger" : "smaller"} across (${oneDecimal(Math.abs(changePct))} %)`;
  const ride = `the vehicle stands ${oneDecimal(Math.abs(growthMm) / 2)} mm ${growthMm > 0 ? "higher" : "lower"} by the tyres alone`;
  return `${size}; ${ride}. By nominal sizes: a new tyre may differ by about 3 %, so measure the fitted one.`;
}
