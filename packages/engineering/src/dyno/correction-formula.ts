import type { CorrectionEdition, CorrectionStandard, Ignition } from "./correction-question";

/**
 * The factor of a code as an engineer writes it: p_d dry pressure in kPa, p total pressure in kPa, t temperature at
 * the inlet in °C, T = t + 273. With `mechanicalEfficiency` SAE J1349 has another form.
 *
 * @source The docs of the factors, in spark-factor.ts and compression-factor.ts.
 */
export function correctionFormula(
  standard: CorrectionStandard,
  edition: CorrectionEdition | null,
  ignition: Ignition,
): string {
  switch (standard) {
    case "SAE_J1349":
      return edition === "JUN1990"
        ? "1.180 × (99 ÷ p_d) × √(T ÷ 298) − 0.180"
        : "1.176 × (99 ÷ p_d) × √(T ÷ 298) − 0.176";
    case "UN_R85":
      return ignition === "spark"
        ? "(99 ÷ p_d)^1.2 × (T ÷ 298)^0.6"
        : "f_a^f_m; f_a = (99 ÷ p_d)^0.7 × (T ÷ 298)^1.5 turbocharged, else (99 ÷ p_d) × (T ÷ 298)^0.7; f_m = 0.036 × q_c − 1.14 from 40 to 65 mg";
    case "DIN_70020":
      return "(101.3 ÷ p) × √(T ÷ 293)";
    case "SAE_J607":
      return "(101.32 ÷ p_d) × √((1.8 × t + 492) ÷ 520)";
  }
}
