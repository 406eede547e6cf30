import type { ForecastAssumptions } from "./forecast-assumptions";
import type { ForecastQuestion } from "./forecast-question";

const REFERENCE_BOOST_KPA = 60;
const REFERENCE_RATIO = 11;
const REFERENCE_OCTANE = 98;
/** Beyond this nobody runs an engine, and the quadratic loss means nothing. */
export const MOST_RETARD_DEG = 25;

/**
 * Crank degrees by which knock holds the spark behind best torque.
 *
 * @source  Common practice, no source: 8 to 14° at 60 kPa, ratio 11 on 98 octane; 3° for 3 octane or a point of
 *          ratio; 6° less on E85; 1° for 6 °C of charge above 45 °C.
 */
export function sparkRetard(
  { compressionRatio, fuel, injection }: ForecastQuestion,
  use: ForecastAssumptions,
  boostKPa: number,
  manifoldTempC: number,
): number {
  const atReferenceBoost =
    use.retardAt60KPaDeg +
    (compressionRatio - REFERENCE_RATIO) * use.retardPerRatioDeg +
    (REFERENCE_OCTANE - use.octaneNumber) * use.retardPerOctaneDeg +
    (fuel === "E85" ? use.ethanolRetardDeg : 0) +
    (injection === "port" ? use.portInjectionRetardDeg : 0);
  const boosted = Math.max(0, atReferenceBoost) * boostShare(boostKPa);
  const charge = Math.max(0, manifoldTempC - use.chargeRetardFromC) / use.chargeCPerRetardDeg;
  return use.baselineRetardDeg + boosted + charge;
}

/** Knock comes with boost: none without, all of the reference at 60 kPa. */
export function boostShare(boostKPa: number): number {
  return Math.max(0, boostKPa) / REFERENCE_BOOST_KPA;
}

/** Share of the torque at best spark that is left at a retard. */
export function sparkEfficiency(retardDeg: number, lossPerDeg2: number): number {
  const held = Math.min(MOST_RETARD_DEG, Math.max(0, retardDeg));
  return Math.max(0.05, 1 - lossPerDeg2 * held ** 2);
}
