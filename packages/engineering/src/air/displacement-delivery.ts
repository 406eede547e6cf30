import { valueAtSpeed } from "../question/speed-curve";
import type { DisplacementBlower } from "./blower-question";
import type { ChargePath } from "./charge-air";
import { airDensity, GAS_CONSTANT } from "./dry-air";

const M2_PER_MM2 = 1e-6;

/** What a displacement blower moves at one speed, whatever the pressure ratio. */
export type DisplacementDelivery = {
  /** kg/s. */
  at(pressureRatio: number): number;
  /** What slips back through the clearances, in per cent of what the rotors sweep. */
  leakagePct(pressureRatio: number): number;
};

/**
 * The volume of each turn at the density of the inlet, less what slips back through the clearances between rotors and
 * housing. They are an orifice: air is driven back at √(2Δp/ρ), which for the inlet's density is √(2·R·T₁·(r − 1)). So
 * the leakage grows with the pressure ratio, and the share of it falls with speed.
 *
 * @source  Orifice law (Bernoulli) with the ideal gas (derivation); that leakage goes with the root of the pressure
 *          difference and hardly with speed is from memory.
 * @valid   Ratios up to about 2, below the speed of sound in the gap. Without an area the volumetric efficiency is all.
 * @vectors shared/reference/blower.json
 */
export function displacementDelivery(
  blower: DisplacementBlower,
  path: ChargePath,
  speedRpm: number,
  blowerSpeedRpm: number,
): DisplacementDelivery {
  const sweptM3PerS = (blower.displacementLPerRev * blowerSpeedRpm) / 60_000;
  const filledM3PerS = valueAtSpeed(blower.volumetricEfficiency, speedRpm) * sweptM3PerS;
  const areaM2 = (blower.leakageAreaMm2 ?? 0) * M2_PER_MM2;
  const density = airDensity(path.inletKPa, path.inletK);
  const leakedM3PerS = (ratio: number) => areaM2 * Math.sqrt(2 * GAS_CONSTANT * path.inletK * (ratio - 1));
  return {
    at: (ratio) => (filledM3PerS - leakedM3PerS(ratio)) * density,
    leakagePct: (ratio) => (100 * leakedM3PerS(ratio)) / sweptM3PerS,
  };
}
