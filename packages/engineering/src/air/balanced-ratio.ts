import { ImpossibleInputError } from "@buildproof/units";
import { rootInBracket } from "../question/root-in-bracket";
import { valueAtSpeed } from "../question/speed-curve";
import type { BlowerQuestion, DisplacementBlower } from "./blower-question";
import { type ChargePath, chargeAir } from "./charge-air";
import { airDensity, airPressure, engineAirFlow } from "./dry-air";

const LOWEST_RATIO = 1;
/** Far beyond any blower; a balance above it means a wrong figure in the question. */
const HIGHEST_RATIO = 100;
/** The answers are wanted to 1e-9; the slope of temperature and power over ratio stays below 1,000. */
const TOLERANCE = 1e-13;

/** kg/s that a displacement blower moves: its volume each turn, at the density of its inlet, less leakage. */
export function displacementDelivery(
  blower: DisplacementBlower,
  path: ChargePath,
  speedRpm: number,
  blowerSpeedRpm: number,
): number {
  const volumeM3PerS = (blower.displacementLPerRev * blowerSpeedRpm) / 60_000;
  return (
    valueAtSpeed(blower.volumetricEfficiency, speedRpm) *
    volumeM3PerS *
    airDensity(path.inletKPa, path.inletK)
  );
}

/**
 * Pressure ratio at which the engine takes what a displacement blower moves; null where the engine would take more
 * at ratio 1, so that the bypass opens. The pressure that packs the delivery into the engine rises slower than the
 * blower's outlet, so there is one balance at most.
 *
 * @source  Conservation of mass with the ideal gas (derivation).
 * @vectors shared/reference/blower.json
 * @throws  ImpossibleInputError where no ratio up to 100 balances, with the bracket.
 */
export function balancedRatio(
  question: BlowerQuestion,
  path: ChargePath,
  speedRpm: number,
  flow: number,
): number | null {
  const { engine } = question;
  const efficiency = valueAtSpeed(engine.volumetricEfficiency, speedRpm);
  const density = flow / engineAirFlow(engine.displacementL, speedRpm, efficiency, 1);
  const excess = (ratio: number): number => {
    const { manifoldK, manifoldKPa } = chargeAir(path, ratio);
    return manifoldKPa - airPressure(density, manifoldK);
  };
  if (excess(LOWEST_RATIO) >= 0) return null;
  const root = rootInBracket(excess, { low: LOWEST_RATIO, high: HIGHEST_RATIO }, TOLERANCE);
  if (root.found) return root.at;
  throw new ImpossibleInputError(
    "no-convergence",
    `At ${speedRpm} rpm no pressure ratio between ${root.bracket.low} and ${root.bracket.high} balances blower and engine: check displacements, pulleys and efficiencies.`,
    "blower",
  );
}
