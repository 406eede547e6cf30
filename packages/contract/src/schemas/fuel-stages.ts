import { fuelPaths } from "@buildproof/engineering";
import { z } from "zod";
import { speedCurve } from "./speed-curve";

const path = z.enum(fuelPaths, { error: `choose one of ${fuelPaths.join(", ")}` }).optional();

const tankPump = z.strictObject({
  kind: z.literal("tank-pump"),
  path,
  points: z.array(z.strictObject({ pressureKPa: z.number(), flowLPerH: z.number() })),
  systemPressureKPa: z.number(),
});

const highPressurePump = z.strictObject({
  kind: z.literal("high-pressure-pump"),
  path,
  displacementCm3PerCamRev: z.number(),
  camRatio: z.number().optional(),
  volumetricEfficiency: speedCurve,
  railPressure: z
    .strictObject({ railKPa: z.number(), ratedKPa: z.number(), lossPctPer10MPa: z.number() })
    .optional(),
});

const portInjectors = z.strictObject({
  kind: z.literal("port-injectors"),
  path,
  count: z.number(),
  staticFlowCm3PerMin: z.number(),
  ratedPressureKPa: z.number(),
  railKPa: z.number(),
  manifoldKPa: z.number(),
  dutyLimit: z.number(),
});

const directInjectors = z.strictObject({
  kind: z.literal("direct-injectors"),
  path,
  count: z.number(),
  staticFlowGPerS: z.number(),
  ratedPressureKPa: z.number(),
  railKPa: z.number(),
  cylinderKPa: z.number(),
  windowDeg: z.number(),
  deadTimeMs: z.number(),
});

/** The stages of a fuel system from the tank to the cylinders. */
export const fuelStages = z.array(
  z.discriminatedUnion("kind", [tankPump, highPressurePump, portInjectors, directInjectors], {
    error: "choose a kind: tank-pump, high-pressure-pump, port-injectors or direct-injectors",
  }),
);
