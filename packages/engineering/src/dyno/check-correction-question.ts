import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import type { CorrectionQuestion } from "./correction-question";

/** Refuses a question whose parts do not go together, naming the part and what to do. */
export function checkCorrectionQuestion(question: CorrectionQuestion): void {
  const humidity = question.relativeHumidityPct;
  if ((humidity === undefined) === (question.vapourPressureKPa === undefined)) {
    throw new ImpossibleInputError(
      "one-humidity",
      "Give the humidity once: either relativeHumidityPct or vapourPressureKPa.",
      "relativeHumidityPct",
    );
  }
  const efficiency = question.mechanicalEfficiency;
  if (efficiency !== undefined && question.standard !== "SAE_J1349") {
    throw new ImpossibleInputError(
      "efficiency-not-used",
      `mechanicalEfficiency belongs to SAE_J1349 only: leave it out for ${question.standard}.`,
      "mechanicalEfficiency",
    );
  }
  if (question.ignition === "compression" && question.standard === "UN_R85" && !question.fuelMgPerLPerCycle) {
    throw new ImpossibleInputError(
      "fuel-missing",
      "Compression ignition needs fuelMgPerLPerCycle, the fuel per litre of displacement and working cycle.",
      "fuelMgPerLPerCycle",
    );
  }
  refuseOutside(question.barometerKPa, "barometerKPa", 1, 200);
  refuseOutside(question.airTempC, "airTempC", -60, 100);
  refuseOutside(humidity, "relativeHumidityPct", 0, 100);
  refuseOutside(question.vapourPressureKPa, "vapourPressureKPa", 0, 200);
  refuseOutside(question.boostRatio, "boostRatio", 0.1, 10);
  refuseOutside(question.fuelMgPerLPerCycle, "fuelMgPerLPerCycle", 0, 1_000);
  refuseOutside(efficiency, "mechanicalEfficiency", 0.1, 1);
  refuseOutside(question.observedPowerKw, "observedPowerKw", -100_000, 100_000);
}
