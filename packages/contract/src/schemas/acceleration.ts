import { acceleration, drivenAxles } from "@buildproof/engineering";
import { z } from "zod";
import { calculation } from "../calculation";

const limit = z.enum(["clutch", "grip", "engine", "shift", "rev-limit"]);

const curve = z.array(z.strictObject({ speedRpm: z.number(), powerKw: z.number() }));

export const accelerationCalculation = calculation({
  summary: "Times to speeds and distances from rest, gear by gear, within grip",
  input: z.strictObject({
    massKg: z.number(),
    rotatingFactor: z.number(),
    tyre: z.string(),
    gears: z.array(z.number()),
    finalDrive: z.number(),
    shiftTimeS: z.number(),
    drivelineEfficiency: z.number(),
    rollingCoefficient: z.number(),
    dragAreaM2: z.number(),
    airDensityKgPerM3: z.number(),
    slopePct: z.number(),
    drivenAxles: z.enum(drivenAxles, { error: `choose one of ${drivenAxles.join(", ")}` }),
    gripCoefficient: z.number(),
    curve,
    gearCurves: z.array(z.strictObject({ gear: z.number(), curve })).optional(),
    targetsKmh: z.array(z.number()),
    distancesM: z.array(z.number()),
    rollOutM: z.number().optional(),
    headwindKmh: z.number().optional(),
    frontLoadPct: z.number().optional(),
    gravityHeightToWheelbase: z.number().optional(),
    launchSpeedRpm: z.number().optional(),
  }),
  output: z.strictObject({
    times: z.array(z.strictObject({ targetKmh: z.number(), s: z.number().nullable() })).readonly(),
    distances: z
      .array(z.strictObject({ m: z.number(), s: z.number().nullable(), kmh: z.number().nullable() }))
      .readonly(),
    rollOut: z.strictObject({ m: z.number(), s: z.number(), kmh: z.number() }).nullable(),
    trace: z
      .array(
        z.strictObject({
          s: z.number(),
          kmh: z.number(),
          m: z.number(),
          gear: z.int(),
          engineRpm: z.number(),
          driveN: z.number(),
          limit,
        }),
      )
      .readonly(),
    phases: z.array(z.strictObject({ fromS: z.number(), toS: z.number(), limit })).readonly(),
    end: z.strictObject({
      s: z.number(),
      kmh: z.number(),
      m: z.number(),
      because: z.enum(["all-reached", "top-speed", "rev-limit", "cannot-start", "too-long"]),
    }),
  }),
  run: (question) => acceleration(question),
});
