import {
  assumptionNames,
  forecastKinds,
  forecastLimits,
  injectionKinds,
  powerForecast,
  powerPlaces,
} from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";
import { ambientAir, blowerInput } from "./blower";
import { fuelName } from "./fuel-demand";
import { fuelStages } from "./fuel-stages";
import { speedCurve } from "./speed-curve";

const assumptionName = z.enum(assumptionNames);

const place = z.enum(powerPlaces, { error: `choose one of ${powerPlaces.join(", ")}` });

const torqueCap = z.union(
  [
    z.number(),
    z.strictObject({
      torqueNm: z.number(),
      name: z.string().max(100).optional(),
      fromRpm: z.number().optional(),
      toRpm: z.number().optional(),
    }),
  ],
  { error: "give a torque in N·m, or { torqueNm, name, fromRpm, toRpm }" },
);

const band = {
  speedRpm: z.number(),
  lowKw: z.number(),
  expectedKw: z.number(),
  highKw: z.number(),
};

const points = z
  .array(
    z.strictObject({
      ...band,
      baselineKw: z.number(),
      crankTorqueNm: z.number(),
      limit: z.enum(forecastLimits),
      because: z.string(),
      boostKPa: z.number().nullable(),
      manifoldTempC: z.number().nullable(),
      sparkRetardDeg: z.number().nullable(),
      fuelKgPerH: z.number(),
    }),
  )
  .readonly();
const peak = z.strictObject(band);

export const powerForecastCalculation = calculation({
  summary:
    "Power over speed of a blown, recalibrated or freer engine: low, expected, high, and what limits it",
  input: z.strictObject({
    baseline: z.strictObject({
      at: place,
      points: z.array(z.strictObject({ speedRpm: z.number(), powerKw: z.number() })).max(10_000),
    }),
    reportAt: place.optional(),
    compressionRatio: z.number(),
    fuel: fuelName,
    injection: z.enum(injectionKinds, { error: `choose one of ${injectionKinds.join(", ")}` }),
    blower: blowerInput.optional(),
    calibrationChange: z
      .strictObject({ torqueRequestNm: speedCurve, smokeLambda: z.number(), exhaustLimitC: z.number() })
      .optional(),
    breathingChange: z
      .strictObject({
        displacementL: z.number(),
        volumetricEfficiency: speedCurve,
        fillingGain: speedCurve.optional(),
        backPressureKPaAt6000: z.number().optional(),
        retardDeg: z.number().optional(),
        lambda: z.number().optional(),
      })
      .optional(),
    fuelSupply: z.strictObject({ stages: fuelStages }).nullish(),
    torqueCaps: z.array(torqueCap).max(100).optional(),
    hotDay: ambientAir.nullish(),
    assumptions: z.partialRecord(assumptionName, z.number()).optional(),
  }),
  output: z.strictObject({
    at: z.enum(powerPlaces),
    kind: z.enum(forecastKinds),
    points,
    peak,
    hotDay: z.strictObject({ points, peak }).nullable(),
    assumptions: z.record(assumptionName, z.number()),
  }),
  run: powerForecast,
});
