import type { CorrectionEdition, CorrectionStandard } from "./correction-question";
import type { IntakeAir } from "./intake-air";

const KPA_PER_INCH_OF_MERCURY = 3.386389;
const REFERENCE_DRY_KPA = 99;
const REFERENCE_KELVIN = 298;

/** SAE J1349's indicated-power term: dry pressure to the first power, temperature to the half. */
function j1349Term(air: IntakeAir): number {
  return (REFERENCE_DRY_KPA / air.dry) * Math.sqrt(air.codeTemperature / REFERENCE_KELVIN);
}

/**
 * SAE J1349 with a stated mechanical efficiency: friction does not change with the air.
 *
 * @source  SAE J1349; the form is from memory, and 1/0.85 reproduces both editions' rounded constants.
 * @vectors shared/reference/dyno-correction.json
 */
function j1349WithEfficiency(air: IntakeAir, efficiency: number): number {
  return (j1349Term(air) - (1 - efficiency)) / efficiency;
}

/**
 * Factor of one code for an engine breathing the air.
 *
 * @source  SAE J1349 JUN1990 (1.180, 0.180) and AUG2004 (1.176, 0.176); UN R85 Annex 5 and ISO 1585,
 *          spark ignition, exponents 1.2 and 0.6; DIN 70020, total pressure in mbar; SAE J607, dry inches
 *          of mercury, 60 °F as 520 °R.
 * @vectors shared/reference/dyno-correction.json
 */
export function sparkFactor(
  standard: CorrectionStandard,
  edition: CorrectionEdition | null,
  air: IntakeAir,
  mechanicalEfficiency?: number,
): number {
  const t = air.codeTemperature - 273;
  switch (standard) {
    case "SAE_J1349": {
      if (mechanicalEfficiency !== undefined) return j1349WithEfficiency(air, mechanicalEfficiency);
      return edition === "JUN1990" ? 1.18 * j1349Term(air) - 0.18 : 1.176 * j1349Term(air) - 0.176;
    }
    case "UN_R85":
      return (REFERENCE_DRY_KPA / air.dry) ** 1.2 * (air.codeTemperature / REFERENCE_KELVIN) ** 0.6;
    case "DIN_70020":
      return (1013 / (air.total * 10)) * Math.sqrt((273 + t) / 293);
    case "SAE_J607":
      return (29.92 / (air.dry / KPA_PER_INCH_OF_MERCURY)) * Math.sqrt((1.8 * t + 492) / 520);
  }
}
