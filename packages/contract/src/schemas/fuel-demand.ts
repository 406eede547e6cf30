import { fuelDemand, fuels } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

export const fuelName = z.enum(fuels, { error: `choose one of ${fuels.join(", ")}` });

export const fuelDemandCalculation = calculation({
  summary: "Fuel an engine burns, from its power and specific consumption or from its air and mixture",
  input: z.strictObject({
    fuel: fuelName,
    brakePowerKw: z.number().optional(),
    bsfcGPerKwh: z.number().optional(),
    airMassFlowKgPerS: z.number().optional(),
    lambda: z.number().optional(),
  }),
  output: z.strictObject({ fuelKgPerH: z.number(), fuelLPerH: z.number() }),
  run: fuelDemand,
});
