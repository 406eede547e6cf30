import { gearingChange } from "@buildproof/engineering";
import { type ChassisItem, finalDrivesOf, type Tyres } from "./chassis-build";
import { oneDecimal } from "./finding";
import type { Driveline } from "./stored-chassis";

export type GearingSheet = {
  readonly finalDrive: number;
  readonly fittedFinalDrive: number;
  /** The final drive that on the standard tyre would gear the vehicle as it is now. */
  readonly effectiveFinalDrive: number;
  /** Negative is taller. */
  readonly changePct: number;
  readonly isChanged: boolean;
  readonly atKmh: number;
  /** The top gears, the highest first. */
  readonly gears: readonly {
    readonly gear: number;
    readonly ratio: number;
    readonly rpmBefore: number;
    readonly rpmAfter: number;
  }[];
  readonly sentence: string;
};

const AT_KMH = 100;
const TOP_GEARS = 3;
/** A change that nobody notices. */
const NOTICED_PCT = 0.05;

/** What tyres and final drive do to the gearing, and the engine's speed in the top gears. */
export function gearingSheet(
  driveline: Driveline,
  items: readonly ChassisItem[],
  tyres: Tyres,
): GearingSheet {
  const { standard, fitted } = finalDrivesOf(driveline, items);
  const inGear = (gear: number) =>
    gearingChange({
      standardTyre: tyres.standard,
      fittedTyre: tyres.fitted,
      finalDrive: standard,
      fittedFinalDrive: fitted,
      gear,
      atKmh: AT_KMH,
    });
  const { effectiveFinalDrive, changePct } = inGear(driveline.gearRatios.at(-1) ?? 1);
  return {
    finalDrive: standard,
    fittedFinalDrive: fitted,
    effectiveFinalDrive,
    changePct,
    isChanged: Math.abs(changePct) >= NOTICED_PCT,
    atKmh: AT_KMH,
    gears: driveline.gearRatios
      .map((ratio, at) => {
        const { engineRpmBefore, engineRpmAfter } = inGear(ratio);
        return { gear: at + 1, ratio, rpmBefore: engineRpmBefore, rpmAfter: engineRpmAfter };
      })
      .slice(-TOP_GEARS)
      .reverse(),
    sentence: sentenceOf(changePct),
  };
}

function sentenceOf(changePct: number): string {
  if (Math.abs(changePct) < NOTICED_PCT) return "Geared as standard.";
  const by = `${oneDecimal(Math.abs(changePct))} %`;
  return changePct < 0
    ? `Geared ${by} taller: lower engine speed on the road, as much less force at the wheels in each gear.`
    : `Geared ${by} shorter: higher engine speed on the road, as much more force at the wheels in each gear.`;
}
