import { ImpossibleInputError } from "@buildproof/units";
import type { z } from "zod";

/** What is there, or the one sentence that says which figure is lacking. */
export type Part<Value> = { readonly value: Value; readonly missing: null } | Missing;
type Missing = { readonly missing: string };

export function present<Value>(value: Value): Part<Value> {
  return { value, missing: null };
}

export function missing(sentence: string): Missing {
  return { missing: sentence };
}

/** All of them, or the first sentence that says what is lacking. */
export function together<Values extends readonly unknown[]>(
  ...parts: { readonly [Place in keyof Values]: Part<Values[Place]> }
): Part<Values> {
  const values: unknown[] = [];
  for (const each of parts) {
    if (each.missing !== null) return missing(each.missing);
    values.push(each.value);
  }
  return present(values as unknown as Values); // pushed in the order of the parts
}

/**
 * Works something out when all that it needs is there. A figure that cannot be (a misprinted designation, a plate
 * that contradicts itself) is told in the words of the calculation that refused it.
 */
export function workedOut<Needs, Value>(needs: Part<Needs>, work: (needs: Needs) => Value): Part<Value> {
  if (needs.missing !== null) return missing(needs.missing);
  try {
    return present(work(needs.value));
  } catch (error) {
    if (error instanceof ImpossibleInputError) return missing(`Not worked out. ${error.message}`);
    throw error;
  }
}

const words: Readonly<Record<string, string>> = {
  standardTyre: "standard tyre",
  driven: "driven axles",
  gearRatios: "gear ratios",
  finalDrive: "final drive",
  transferRatio: "transfer ratio",
  shiftTimeS: "shift time",
  speedometerOverPct: "speedometer error on the standard tyre",
  speedTakenAt: "place where the speed is taken",
  kerbFrontKg: "kerb load on the front axle",
  kerbRearKg: "kerb load on the rear axle",
  frontRatingKg: "front axle rating",
  rearRatingKg: "rear axle rating",
  gvmKg: "gross vehicle mass",
  gcmKg: "gross combination mass",
  brakedTowKg: "braked tow rating",
  unbrakedTowKg: "unbraked tow rating",
  ballLimitKg: "ball limit",
  wheelbaseMm: "wheelbase",
  ballBehindRearAxleMm: "distance of the ball from the rear axle",
  gravityHeightMm: "height of the centre of gravity",
  seatRows: "rows of seats",
  topSpeedKmh: "top speed",
  dragCoefficient: "drag coefficient",
  frontalAreaM2: "frontal area",
  rollingCoefficient: "rolling coefficient",
  rotatingFactor: "rotating factor",
  gripCoefficient: "grip",
};

/** Reads a group of a model's figures; what is absent or no such figure is named in words. */
export function readStored<Schema extends z.ZodType>(
  schema: Schema,
  stored: unknown,
  modelName: string,
): Part<z.output<Schema>> {
  const parsed = schema.safeParse(stored ?? {});
  if (parsed.success) return present(parsed.data);
  const names = [...new Set(parsed.error.issues.map(({ path }) => String(path[0] ?? "")))];
  const listed = names.map((name) => words[name] ?? name);
  const last = listed.pop() ?? "figures";
  const all = listed.length > 0 ? `${listed.join(", ")} and ${last}` : last;
  return missing(
    `Not worked out: the catalogue does not have the ${all} of the ${modelName}. Add what is missing to the model's figures.`,
  );
}
