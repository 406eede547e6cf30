import { checkCorrectionQuestion } from "./check-correction-question";
import { compressionFactor } from "./compression-factor";
import { correctionEdition } from "./correction-edition";
import type { Correction, CorrectionQuestion } from "./correction-question";
import { correctionWarnings, isValidCorrection } from "./correction-validity";
import { intakeAir } from "./intake-air";
import { sparkFactor } from "./spark-factor";

/**
 * Factor that brings observed power and torque to the reference air of a code, whether the code
 * allows it, and what to be careful about. Print the observed figure beside the corrected one.
 *
 * @source  SAE J1349, UN R85 Annex 5, ISO 1585, DIN 70020, SAE J607: see the factors.
 * @vectors shared/reference/dyno-correction.json
 * @throws  ImpossibleInputError when the parts of the question do not go together.
 */
export function dynoCorrection(question: CorrectionQuestion): Correction {
  checkCorrectionQuestion(question);
  const { standard, aspiration, observedPowerKw = null } = question;
  const edition = correctionEdition(question);
  const air = intakeAir(question);
  const factor =
    question.ignition === "compression" && standard === "UN_R85"
      ? compressionFactor(
          air,
          {
            aspiration,
            fuelMgPerLPerCycle: question.fuelMgPerLPerCycle ?? 0,
            boostRatio: question.boostRatio ?? 1,
          },
          edition ?? "R85",
        )
      : sparkFactor(standard, edition, air, question.mechanicalEfficiency);
  const warnings = correctionWarnings(question, air, factor);
  return {
    standard,
    edition,
    factor,
    vapourPressureKPa: air.vapour,
    dryPressureKPa: air.dry,
    valid: isValidCorrection(warnings),
    warnings,
    observedPowerKw,
    correctedPowerKw: observedPowerKw === null ? null : observedPowerKw * factor,
  };
}
