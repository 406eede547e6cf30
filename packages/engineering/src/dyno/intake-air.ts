import {
  celsius,
  ImpossibleInputError,
  type Kelvin,
  type KilopascalsAbsolute,
  kelvin,
  kelvinFromCelsius,
  kilopascalsAbsolute,
} from "@buildproof/units";
import type { CorrectionQuestion } from "./correction-question";
import { saturationPressure } from "./saturation-pressure";

export type IntakeAir = {
  readonly total: KilopascalsAbsolute;
  readonly vapour: KilopascalsAbsolute;
  readonly dry: KilopascalsAbsolute;
  /** t + 273, as the correction codes write it; not the thermodynamic temperature. */
  readonly codeTemperature: Kelvin;
};

/**
 * The air the engine breathed: dry pressure is the barometer less the water vapour.
 *
 * @source  40 CFR 1065.645 (vapour from humidity); UN R85 Annex 5 and ISO 1585 (dry pressure, T/298).
 * @vectors shared/reference/vapour-pressure.json
 */
export function intakeAir(question: CorrectionQuestion): IntakeAir {
  const temperature = celsius(question.airTempC);
  const total = kilopascalsAbsolute(question.barometerKPa);
  const vapour = kilopascalsAbsolute(
    question.vapourPressureKPa ??
      ((question.relativeHumidityPct ?? 0) / 100) * saturationPressure(kelvinFromCelsius(temperature)),
  );
  if (vapour >= total) {
    throw new ImpossibleInputError(
      "no-dry-pressure",
      "The water vapour would leave no dry air: check barometer, humidity and their units.",
      question.vapourPressureKPa === undefined ? "relativeHumidityPct" : "vapourPressureKPa",
    );
  }
  return {
    total,
    vapour,
    dry: kilopascalsAbsolute(total - vapour),
    codeTemperature: kelvin(temperature + 273),
  };
}
