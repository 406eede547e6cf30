import type { fuelKinds, vehicleUses } from "@buildproof/workshop";
import { numberOf, orNull, textOf, ticksOf } from "@/server/form-entries";

export function customerOf(form: FormData) {
  return {
    name: textOf(form, "name"),
    phone: textOf(form, "phone"),
    email: textOf(form, "email"),
    address: textOf(form, "address"),
    taxNumber: textOf(form, "taxNumber"),
    notes: textOf(form, "notes"),
  };
}

/** The entries of a vehicle. The use case knows which fuels and uses there are, and refuses any other. */
export function vehicleOf(form: FormData) {
  return {
    vin: textOf(form, "vin"),
    modelCode: textOf(form, "modelCode"),
    plate: textOf(form, "plate"),
    odometerKm: numberOf(form, "odometerKm"),
    fuelKind: textOf(form, "fuelKind") as (typeof fuelKinds)[number], // Judged by the use case.
    fuelOctane: orNull(form, "fuelOctane", numberOf),
    uses: ticksOf(form, "uses") as (typeof vehicleUses)[number][], // Judged by the use case.
    trailerGtmKg: orNull(form, "trailerGtmKg", numberOf),
    alreadyFitted: textOf(form, "alreadyFitted"),
  };
}
