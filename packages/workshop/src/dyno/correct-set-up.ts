import { type Correction, dynoCorrection } from "@buildproof/engineering";
import { ImpossibleInputError } from "@buildproof/units";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import { type DynoSetUp, dynoCodes } from "./dyno-fields";
import { refuse } from "./dyno-refusals";
import type { MeasuredEngine } from "./measured-engine";

/** The factor for runs made in this air, or why there is none. */
export function correctSetUp(setUp: DynoSetUp, { ignition }: MeasuredEngine): Result<Correction> {
  const { standard, edition } = dynoCodes[setUp.code];
  const { aspiration, barometerKPa, airTempC, relativeHumidityPct, fuelMgPerLPerCycle, boostRatio } = setUp;
  if (ignition === "compression" && standard === "UN_R85" && fuelMgPerLPerCycle === undefined) {
    const sentence = "UN R85 corrects a diesel by its fuel: enter the fuel per litre and cycle in mg.";
    return atField("fuelMgPerLPerCycle", refuse("air-impossible", { sentence }));
  }
  try {
    return ok(
      dynoCorrection({
        standard,
        edition,
        ignition,
        aspiration,
        barometerKPa,
        airTempC,
        relativeHumidityPct,
        ...(ignition === "compression" ? { fuelMgPerLPerCycle, boostRatio } : {}),
      }),
    );
  } catch (error) {
    if (!(error instanceof ImpossibleInputError)) throw error;
    return atField("barometerKPa", refuse("air-impossible", { sentence: error.message }));
  }
}
