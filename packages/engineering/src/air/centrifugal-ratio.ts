import type { CentrifugalBlower } from "./blower-question";
import { ISENTROPIC_EXPONENT } from "./dry-air";

/**
 * Pressure ratio of a centrifugal blower away from its design speed: the head goes with the square of the speed.
 *
 * @source  Affinity law of turbomachines, at constant efficiency and flow coefficient.
 * @valid   Near the design point; surge and choke are not seen, so far above the design speed the figure only says that it cannot be.
 * @vectors shared/reference/blower.json
 */
export function centrifugalRatio(blower: CentrifugalBlower, blowerSpeedRpm: number): number {
  const designHead = blower.designPressureRatio ** ISENTROPIC_EXPONENT - 1;
  const head = designHead * (blowerSpeedRpm / blower.designSpeedRpm) ** 2;
  return (1 + head) ** (1 / ISENTROPIC_EXPONENT);
}
