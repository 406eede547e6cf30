import { z } from "zod";

export const vehicleUses = ["towing", "touring", "street", "track"] as const;
export const fuelKinds = ["petrol", "e10", "e85", "diesel"] as const;
export type FuelKind = (typeof fuelKinds)[number];

/** What is kept of a vehicle, as it is typed. */
export const vehicleFields = {
  modelCode: z.string("Choose the model of the vehicle.").min(1, "Choose the model of the vehicle.").max(80),
  plate: z
    .string()
    .trim()
    .max(12, "A plate has at most 12 characters.")
    .regex(/^[\p{L}\p{N} ·-]*$/u, "A plate has letters, digits and spaces.")
    .transform((plate) => plate.toUpperCase().replace(/\s+/g, " ")),
  odometerKm: z
    .number("Enter the odometer in whole kilometres.")
    .int("Enter the odometer in whole kilometres.")
    .min(0, "The odometer is 0 km or more.")
    .max(2_000_000, "Check the odometer: it reads more than 2,000,000 km."),
  fuelKind: z.enum(fuelKinds, "Choose the fuel that the owner really buys."),
  fuelOctane: z
    .number("Choose the octane from the list.")
    .int("Enter the octane as a whole number, as it stands on the pump.")
    .min(80, "An octane number lies between 80 and 120.")
    .max(120, "An octane number lies between 80 and 120.")
    .nullable(),
  uses: z.array(z.enum(vehicleUses, "Choose what the vehicle is used for from the list.")).max(4),
  /** Gross trailer mass: what the wheels of the heaviest trailer carry, loaded. Null where it tows none. */
  trailerGtmKg: z
    .number("Enter the trailer's mass in whole kilograms, or leave it empty.")
    .int("Enter the trailer's mass in whole kilograms, or leave it empty.")
    .min(1, "A trailer weighs more than 0 kg. Leave it empty where the vehicle tows none.")
    .max(10_000, "Check the trailer's mass: it reads more than 10,000 kg.")
    .nullable(),
  alreadyFitted: z.string().trim().max(2_000, "Keep what is already fitted to 2,000 characters."),
};
