import { fuelPaths, fuelStageKinds, fuelSupply } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";
import { fuelName } from "./fuel-demand";
import { fuelStages } from "./fuel-stages";

export const fuelSupplyCalculation = calculation({
  summary: "What each stage of a fuel system passes at an engine speed, and which stage limits it",
  input: z.strictObject({ fuel: fuelName, speedRpm: z.number(), stages: fuelStages }),
  output: z.strictObject({
    stages: z
      .array(
        z.strictObject({
          kind: z.enum(fuelStageKinds),
          path: z.enum(fuelPaths),
          fuelKgPerH: z.number(),
          windowPct: z.number().nullable(),
        }),
      )
      .readonly(),
    limit: z.strictObject({ kind: z.enum(fuelStageKinds), fuelKgPerH: z.number() }),
  }),
  run: fuelSupply,
});
