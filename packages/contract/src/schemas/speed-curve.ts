import { z } from "zod";

/** A number that holds at every engine speed, or points of a curve over it. */
export const speedCurve = z.union(
  [z.number(), z.array(z.strictObject({ speedRpm: z.number(), value: z.number() }))],
  { error: "give a number, or a list of { speedRpm, value }" },
);
