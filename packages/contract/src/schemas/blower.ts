import { blower } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";
import { speedCurve } from "./speed-curve";

const displacement = z.strictObject({
  kind: z.literal("displacement"),
  displacementLPerRev: z.number(),
  volumetricEfficiency: speedCurve,
  leakageAreaMm2: z.number().optional(),
  adiabaticEfficiency: speedCurve,
  maxSpeedRpm: z.number(),
});

const centrifugal = z.strictObject({
  kind: z.literal("centrifugal"),
  designSpeedRpm: z.number(),
  designPressureRatio: z.number(),
  volumetricEfficiency: speedCurve.optional(),
  adiabaticEfficiency: speedCurve,
  maxSpeedRpm: z.number(),
});

export const ambientAir = z.strictObject({ pressureKPa: z.number(), tempC: z.number() });

export const blowerInput = z.strictObject({
  engine: z.strictObject({
    displacementL: z.number(),
    volumetricEfficiency: speedCurve,
    maxSpeedRpm: z.number(),
  }),
  blower: z.discriminatedUnion("kind", [displacement, centrifugal], {
    error: "choose a kind: displacement or centrifugal",
  }),
  drive: z.strictObject({
    crankPulleyMm: z.number(),
    blowerPulleyMm: z.number(),
    internalRatio: z.number(),
    maxBeltSpeedMPerS: z.number().optional(),
    efficiency: speedCurve.optional(),
  }),
  ambient: ambientAir,
  chargeCooler: z
    .strictObject({ effectiveness: z.number(), coolantTempC: z.number(), pressureDropKPa: z.number() })
    .nullish(),
  inletDropKPa: z.number().optional(),
  speedsRpm: z.array(z.number()).max(10_000, { error: "at most 10,000 speeds: ask for fewer" }),
});

export const blowerCalculation = calculation({
  summary: "Where a belt-driven blower and an engine settle: boost, air, temperatures, drive power",
  input: blowerInput,
  output: z.strictObject({
    points: z
      .array(
        z.strictObject({
          speedRpm: z.number(),
          blowerSpeedRpm: z.number(),
          pressureRatio: z.number(),
          boostKPa: z.number(),
          airMassFlowKgPerS: z.number(),
          dischargeTempC: z.number(),
          manifoldTempC: z.number(),
          drivePowerKw: z.number(),
          beltSpeedMPerS: z.number(),
          beltOverspeed: z.boolean(),
          overspeed: z.boolean(),
          leakagePct: z.number().nullable(),
          bypass: z.boolean(),
        }),
      )
      .readonly(),
  }),
  run: blower,
});
