import { assumptionNames, type FuelStage, fuels, injectionKinds } from "@buildproof/engineering";
import { z } from "zod";

/** How the engineering's figures lie in the JSON columns of models and items; other keys are other pages' affair. */
const speedCurve = z.union([
  z.number(),
  z.array(z.strictObject({ speedRpm: z.number(), value: z.number() })).min(1),
]);

const tankPump = z.strictObject({
  kind: z.literal("tank-pump"),
  points: z.array(z.strictObject({ pressureKPa: z.number(), flowLPerH: z.number() })).min(2),
  systemPressureKPa: z.number(),
});
const highPressurePump = z.strictObject({
  kind: z.literal("high-pressure-pump"),
  displacementCm3PerCamRev: z.number(),
  camRatio: z.number().optional(),
  volumetricEfficiency: speedCurve,
  railPressure: z
    .strictObject({ railKPa: z.number(), ratedKPa: z.number(), lossPctPer10MPa: z.number() })
    .optional(),
});
const injectors = { count: z.number(), ratedPressureKPa: z.number(), railKPa: z.number() };
const portInjectors = z.strictObject({
  kind: z.literal("port-injectors"),
  ...injectors,
  staticFlowCm3PerMin: z.number(),
  manifoldKPa: z.number(),
  dutyLimit: z.number(),
});
const directInjectors = z.strictObject({
  kind: z.literal("direct-injectors"),
  ...injectors,
  staticFlowGPerS: z.number(),
  cylinderKPa: z.number(),
  windowDeg: z.number(),
  deadTimeMs: z.number(),
});
const fuelStage: z.ZodType<FuelStage> = z.discriminatedUnion("kind", [
  tankPump,
  highPressurePump,
  portInjectors,
  directInjectors,
]);

const assumed = z.partialRecord(z.enum(assumptionNames), z.number());

/** A controller's limit of the torque at the crank, in some gears or in all. */
const torqueCap = z.strictObject({
  /** A later one of the same id takes the place of an earlier one. */
  id: z.string(),
  name: z.string(),
  torqueNm: z.number(),
  gears: z.array(z.number()).min(1).optional(),
});
export type StoredCap = z.output<typeof torqueCap>;

export const modelFigures = z.object({
  displacementL: z.number(),
  compressionRatio: z.number(),
  injection: z.enum(injectionKinds),
  fuelKind: z.enum(["petrol", "diesel"]),
  engine: z.object({
    redlineRpm: z.number(),
    volumetricEfficiency: speedCurve,
    ratedAtCrank: z.array(z.strictObject({ speedRpm: z.number(), powerKw: z.number() })).min(2),
    /** Where this model differs from what is usual. */
    assume: assumed.optional(),
  }),
  air: z.object({ inletDropKPa: z.number() }),
  fuel: z.object({ stages: z.array(fuelStage).min(1) }),
  caps: z.array(torqueCap).default([]),
});
export type ModelFigures = z.output<typeof modelFigures>;

const drive = z.strictObject({
  crankPulleyMm: z.number(),
  blowerPulleyMm: z.number(),
  internalRatio: z.number(),
  maxBeltSpeedMPerS: z.number().optional(),
});
/** The item it belongs to, as a pulley to its blower: without it there is none. */
const partOf = { needs: z.string().optional() };
const blower = z.discriminatedUnion("kind", [
  z.strictObject({
    ...partOf,
    kind: z.literal("displacement"),
    displacementLPerRev: z.number(),
    volumetricEfficiency: speedCurve,
    leakageAreaMm2: z.number().optional(),
    adiabaticEfficiency: speedCurve,
    maxSpeedRpm: z.number(),
    drive,
  }),
  z.strictObject({
    ...partOf,
    kind: z.literal("centrifugal"),
    designSpeedRpm: z.number(),
    designPressureRatio: z.number(),
    adiabaticEfficiency: speedCurve,
    maxSpeedRpm: z.number(),
    drive,
  }),
]);

export const itemFigures = z.object({
  blower: blower.optional(),
  chargeCooler: z
    .strictObject({
      effectiveness: z.number(),
      coolantOverAmbientC: z.number(),
      pressureDropKPa: z.number(),
      /** The item it improves: alone it cools nothing. */
      needs: z.string().optional(),
    })
    .optional(),
  /** Each takes the place of the vehicle's stage of its kind, or is added where there is none. */
  fuelStages: z.array(fuelStage).optional(),
  burns: z.strictObject({ fuel: z.enum(fuels).optional(), octaneNumber: z.number().optional() }).optional(),
  calibration: z
    .strictObject({ torqueRequestNm: speedCurve, smokeLambda: z.number(), exhaustLimitC: z.number() })
    .optional(),
  /** Of an engine that breathes by itself; with a blower it has no say. */
  breathing: z
    .strictObject({
      fillingGain: z.number().optional(),
      backPressureKPaAt6000: z.number().optional(),
      retardDeg: z.number().optional(),
      lambda: z.number().optional(),
    })
    .optional(),
  caps: z.array(torqueCap).optional(),
  assume: assumed.optional(),
});
export type ItemFigures = z.output<typeof itemFigures>;
