import { boltTorque, propertyClasses } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

export const boltTorqueCalculation = calculation({
  summary: "Stress area, preload and tightening torque of a metric bolt",
  input: z.strictObject({
    thread: z.string(),
    propertyClass: z.enum(propertyClasses, { error: `choose one of ${propertyClasses.join(", ")}` }),
    preloadPct: z.number(),
    frictionK: z.number().optional(),
    threadFriction: z.number().optional(),
    headFriction: z.number().optional(),
    headBearingDiameterMm: z.number().optional(),
  }),
  output: z.strictObject({
    pitchMm: z.number(),
    stressAreaMm2: z.number(),
    proofStressMPa: z.number(),
    preloadKN: z.number(),
    frictionK: z.number(),
    torqueNm: z.number(),
  }),
  run: boltTorque,
});
