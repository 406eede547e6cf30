import { drivenAxles } from "@buildproof/engineering";
import { z } from "zod";

/* How gearing, masses, tyres and road figures lie in the JSON columns of models and items. */

const positive = z.number().positive();
const share = z.number().min(-2).max(3);

export const storedDriveline = z.object({
  /** From first to top. */
  gearRatios: z.array(positive).min(1),
  finalDrive: positive,
  /** High range. */
  transferRatio: positive,
  shiftTimeS: z.number().min(0),
});

export const storedTyre = z.object({
  /** On the standard tyre, measured. */
  speedometerOverPct: z.number(),
  speedTakenAt: z.enum(["gearbox", "wheels"]),
});

export const storedMasses = z.object({
  kerbFrontKg: positive,
  kerbRearKg: positive,
  frontRatingKg: positive,
  rearRatingKg: positive,
  gvmKg: positive,
  gcmKg: positive,
  brakedTowKg: z.number().min(0),
  unbrakedTowKg: z.number().min(0),
  ballLimitKg: z.number().min(0),
  wheelbaseMm: positive,
  ballBehindRearAxleMm: positive,
  gravityHeightMm: positive,
  seatRows: z.array(z.object({ seats: z.int().positive(), frontAxleShare: share })).min(1),
});

export const storedRoad = z.object({
  topSpeedKmh: positive,
  dragCoefficient: positive,
  frontalAreaM2: positive,
  rollingCoefficient: positive,
  rotatingFactor: z.number().min(1),
  gripCoefficient: positive,
});

export const storedModel = z.object({ standardTyre: z.string().min(1), driven: z.enum(drivenAxles) });

export const storedItem = z.object({
  masses: z
    .object({
      /** How much of its mass the front axle carries; above 1 ahead of it, below 0 behind the rear one. */
      frontAxleShare: share,
      /** What it takes the place of, by the fact of the vehicle that says what that weighs. */
      replacesFact: z.string(),
      gvmAddKg: z.number().min(0),
      frontRatingAddKg: z.number().min(0),
      rearRatingAddKg: z.number().min(0),
      /** Of a towing duty: the whole loaded trailer, and what of it rests on the ball. */
      trailerKg: positive,
      ballKg: z.number().min(0),
    })
    .partial()
    .optional(),
  tyre: z
    .object({
      designation: z.string().min(1),
      placardKmh: positive,
      /** What a recalibrated speedometer is set to show over the true speed. */
      speedometerOverPct: z.number(),
    })
    .partial()
    .optional(),
  driveline: z.object({ finalDrive: positive }).optional(),
});

export type Driveline = z.output<typeof storedDriveline>;
export type TyreFigures = z.output<typeof storedTyre>;
export type Masses = z.output<typeof storedMasses>;
export type Road = z.output<typeof storedRoad>;
export type ItemChassis = z.output<typeof storedItem>;
