import {
  aspirations,
  correctionEditions,
  correctionStandards,
  dynoCorrection,
  ignitions,
} from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

export const dynoCorrectionCalculation = calculation({
  summary: "Factor that brings dyno power to the reference air of SAE J1349, UN R85, DIN 70020 or SAE J607",
  input: z.strictObject({
    standard: z.enum(correctionStandards, { error: `choose one of ${correctionStandards.join(", ")}` }),
    edition: z
      .enum(correctionEditions, { error: `choose one of ${correctionEditions.join(", ")}` })
      .optional(),
    ignition: z.enum(ignitions, { error: `choose one of ${ignitions.join(", ")}` }),
    aspiration: z.enum(aspirations, { error: `choose one of ${aspirations.join(", ")}` }),
    barometerKPa: z.number(),
    airTempC: z.number(),
    relativeHumidityPct: z.number().optional(),
    vapourPressureKPa: z.number().optional(),
    fuelMgPerLPerCycle: z.number().optional(),
    boostRatio: z.number().optional(),
    observedPowerKw: z.number().optional(),
    mechanicalEfficiency: z.number().optional(),
  }),
  output: z.strictObject({
    standard: z.enum(correctionStandards),
    edition: z.enum(correctionEditions).nullable(),
    factor: z.number(),
    vapourPressureKPa: z.number(),
    dryPressureKPa: z.number(),
    valid: z.boolean(),
    warnings: z.array(z.string()).readonly(),
    observedPowerKw: z.number().nullable(),
    correctedPowerKw: z.number().nullable(),
  }),
  run: dynoCorrection,
});
