import type { Aspiration, CorrectionEdition } from "./correction-question";
import type { IntakeAir } from "./intake-air";

export type CompressionEngine = {
  readonly aspiration: Aspiration;
  readonly fuelMgPerLPerCycle: number;
  readonly boostRatio: number;
};

/**
 * Atmospheric factor f_a. A mechanical blower follows the air like a natural engine; a turbocharger
 * makes up part of the pressure.
 *
 * @source UN R85 Annex 5 (turbocharged exponent 1.5 from memory); ISO 1585 splits by charge cooler
 *         (1.2 without or air-to-air, 0.7 air-to-liquid), as printed in engine makers' service manuals.
 */
function atmosphericFactor(air: IntakeAir, aspiration: Aspiration, edition: CorrectionEdition): number {
  const pressure = 99 / air.dry;
  const temperature = air.codeTemperature / 298;
  if (aspiration === "natural" || aspiration === "mechanical") return pressure * temperature ** 0.7;
  if (edition !== "ISO1585") return pressure ** 0.7 * temperature ** 1.5;
  return pressure ** 0.7 * temperature ** (aspiration === "turbo-cooled" ? 0.7 : 1.2);
}

/**
 * Engine factor f_m from the corrected fuel per litre and cycle, q_c = q ÷ boost ratio.
 *
 * @source  UN R85 Annex 5 paragraph 5.4.2.2: 0.036·q_c − 1.14 from 40 to 65, 0.3 below, 1.2 above.
 *          ISO 1585 as printed in service manuals: from 37.2, 0.2 below.
 * @vectors shared/reference/dyno-correction.json
 */
function engineFactor(correctedFuelMgPerLPerCycle: number, edition: CorrectionEdition): number {
  const [lowest, below] = edition === "ISO1585" ? [37.2, 0.2] : [40, 0.3];
  if (correctedFuelMgPerLPerCycle < lowest) return below;
  if (correctedFuelMgPerLPerCycle > 65) return 1.2;
  return 0.036 * correctedFuelMgPerLPerCycle - 1.14;
}

/** α_d = f_a ^ f_m, as UN R85 and ISO 1585 define it. */
export function compressionFactor(
  air: IntakeAir,
  engine: CompressionEngine,
  edition: CorrectionEdition,
): number {
  const fm = engineFactor(engine.fuelMgPerLPerCycle / engine.boostRatio, edition);
  return atmosphericFactor(air, engine.aspiration, edition) ** fm;
}
