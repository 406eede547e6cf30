import { speedometer } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

export const speedometerCalculation = calculation({
  summary: "Speedometer error, measured or after a tyre change, against UN R39",
  input: z.strictObject({
    trueKmh: z.number().optional(),
    indicatedKmh: z.number(),
    standardTyre: z.string().optional(),
    fittedTyre: z.string().optional(),
    standardErrorPct: z.number().optional(),
  }),
  output: z.strictObject({
    trueKmh: z.number(),
    indicatedKmh: z.number(),
    errorPct: z.number(),
    meetsUnR39: z.boolean(),
    recalibrationNeeded: z.boolean(),
  }),
  run: speedometer,
});
