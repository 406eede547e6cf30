import { describe, expect, test } from "vitest";
import { correctionFormula } from "./correction-formula";
import type { CorrectionEdition, CorrectionStandard } from "./correction-question";
import { dynoCorrection } from "./dyno-correction";

/** Works a written formula out, so that what people read cannot drift from what is calculated. */
function worked(formula: string, air: { p: number; p_d: number; t: number }): number {
  const script = formula
    .replaceAll("÷", "/")
    .replaceAll("×", "*")
    .replaceAll("−", "-")
    .replaceAll("^", "**")
    .replaceAll("√", "Math.sqrt");
  return Number(new Function("p", "p_d", "t", "T", `return ${script}`)(air.p, air.p_d, air.t, air.t + 273));
}

const cases: readonly (readonly [CorrectionStandard, CorrectionEdition | undefined])[] = [
  ["SAE_J1349", "AUG2004"],
  ["SAE_J1349", "JUN1990"],
  ["UN_R85", "R85"],
  ["DIN_70020", undefined],
  ["SAE_J607", undefined],
];

describe("the formula as it is written", () => {
  test.each(cases)("of %s %s gives the factor that is calculated", (standard, edition) => {
    const asked = { standard, edition, ignition: "spark", aspiration: "natural" } as const;
    for (const [barometerKPa, airTempC] of [
      [99.2, 31],
      [101.3, 15],
      [92, 34],
    ] as const) {
      const { factor, dryPressureKPa } = dynoCorrection({
        ...asked,
        barometerKPa,
        airTempC,
        relativeHumidityPct: 30,
      });
      const formula = correctionFormula(standard, edition ?? null, "spark");
      const air = { p: barometerKPa, p_d: dryPressureKPa, t: airTempC };
      // 29.92 inHg are 101.3207 kPa; written with two decimals.
      expect(worked(formula, air)).toBeCloseTo(factor, 4);
    }
  });
});
