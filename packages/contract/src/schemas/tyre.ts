import { tyre } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

export const tyreCalculation = calculation({
  summary: "Diameter, load, speed and revolutions per kilometre of a tyre designation",
  input: z.strictObject({ designation: z.string() }),
  output: z.strictObject({
    form: z.enum(["metric", "flotation"]),
    serviceType: z.string().nullable(),
    construction: z.string(),
    overallDiameterMm: z.number(),
    exactDiameterMm: z.number(),
    sectionWidthMm: z.number(),
    rimDiameterIn: z.number(),
    aspectPct: z.number().nullable(),
    loadIndex: z.int().nullable(),
    dualLoadIndex: z.int().nullable(),
    loadKg: z.number().nullable(),
    speedSymbol: z.string().nullable(),
    speedKmh: z.number().nullable(),
    revsPerKm: z.number(),
  }),
  run: ({ designation }) => tyre(designation),
});
