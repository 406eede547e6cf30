import { ImpossibleInputError } from "@buildproof/units";
import { rootInBracket } from "../question/root-in-bracket";
import { valueAtSpeed } from "../question/speed-curve";
import type { BlowerQuestion } from "./blower-question";
import { type ChargePath, chargeAir } from "./charge-air";
import type { DisplacementDelivery } from "./displacement-delivery";
import { airPressure, engineAirFlow } from "./dry-air";

const LOWEST_RATIO = 1;
/** Far beyond any blower; a balance above it means a wrong figure in the question. */
const HIGHEST_RATIO = 100;
/** Leakage goes with the root of ratio − 1: in that root everything is smooth, down to where the bypass opens. */
const ratioOf = (root: number) => LOWEST_RATIO + root ** 2;
const HIGHEST_ROOT = Math.sqrt(HIGHEST_RATIO - LOWEST_RATIO);
/** Nearly every balance lies below this one, and a narrow bracket is closed sooner. */
const USUAL_ROOT = Math.sqrt(2.5 - LOWEST_RATIO);
/** The answers are wanted to 1e-9; the slope of temperature and power over ratio stays below 1,000. */
const TOLERANCE = 1e-13;

/**
 * Pressure ratio at which the engine takes what a displacement blower moves; null where the engine would take more
 * at ratio 1, so that the bypass opens. The pressure that packs the delivery into the engine rises slower than the
 * blower's outlet, and leakage only lowers it, so there is one balance at most.
 *
 * @source  Conservation of mass with the ideal gas (derivation).
 * @vectors shared/reference/blower.json
 * @throws  ImpossibleInputError where no ratio up to 100 balances, with the bracket.
 */
export function balancedRatio(
  question: BlowerQuestion,
  path: ChargePath,
  speedRpm: number,
  delivery: DisplacementDelivery,
): number | null {
  const { engine } = question;
  const efficiency = valueAtSpeed(engine.volumetricEfficiency, speedRpm);
  const flowPerDensity = engineAirFlow(engine.displacementL, speedRpm, efficiency, 1);
  const excess = (ratio: number): number => {
    const { manifoldK, manifoldKPa } = chargeAir(path, ratio);
    return manifoldKPa - airPressure(delivery.at(ratio) / flowPerDensity, manifoldK);
  };
  if (excess(LOWEST_RATIO) >= 0) return null;
  const excessAt = (at: number) => excess(ratioOf(at));
  const highest = excessAt(USUAL_ROOT) > 0 ? USUAL_ROOT : HIGHEST_ROOT;
  const root = rootInBracket(excessAt, { low: 0, high: highest }, TOLERANCE);
  if (root.found) return ratioOf(root.at);
  const { low, high } = root.bracket;
  throw new ImpossibleInputError(
    "no-convergence",
    `At ${speedRpm} rpm no pressure ratio between ${Math.round(ratioOf(low))} and ${Math.round(ratioOf(high))} balances blower and engine: check displacements, pulleys and efficiencies.`,
    "blower",
  );
}
