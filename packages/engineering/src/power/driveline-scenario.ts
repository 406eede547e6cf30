import type { DrivelineLoss, PowerPlace } from "../driveline/driveline-loss";
import type { ForecastAssumptions } from "./forecast-assumptions";
import type { Deviation } from "./forecast-band";

/** The way from the crank as assumed, or as far off as asked. */
export function drivelineOff(use: ForecastAssumptions, off: Deviation): DrivelineLoss {
  return {
    meshEfficiency: Math.min(1, Math.max(0.05, use.meshEfficiency + off.mesh)),
    dragKwAt6000: Math.max(0, use.dragKwAt6000 + off.dragKw),
    tyreEfficiency: use.tyreEfficiency,
  };
}

/** How far baseline and driveline may be off: a rating more than a run, and no driveline where power is told at the crank. */
export function baselineSpread(at: PowerPlace, use: ForecastAssumptions): Partial<Deviation> {
  if (at === "crank") return { baseline: use.ratedBandShare };
  return { baseline: use.measuredBandShare, mesh: use.meshBand, dragKw: use.dragBandKw };
}
