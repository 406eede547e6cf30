import { vin as readVin } from "@buildproof/compliance";
import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok, type Result } from "../core/result";
import { revision } from "../core/revision";
import { command } from "../core/use-case";
import { refuseCustomer } from "./customer-refusals";
import { checkFuel } from "./vehicle-checks";
import { vehicleFields } from "./vehicle-fields";

const vinText = z
  .string("Enter the VIN.")
  .trim()
  .min(1, "Enter the VIN.")
  .max(40, "A VIN has 17 characters.");

/** Adds a vehicle by its VIN. A check digit that does not match is told, never refused: few countries bind it. */
export const addVehicle = command({
  name: "customers.add-vehicle",
  permission: "customers:write",
  input: z.strictObject({ customerId: z.uuid("Choose the customer first."), vin: vinText, ...vehicleFields }),
  async run({ tx, workshopId, now, audit }, { customerId, vin: written, modelCode, ...fields }) {
    const customer = await tx.customer.findUnique({ where: { id: customerId } });
    if (!customer) return refuseCustomer("customer-not-found");
    const vin = await freeVin(tx, written, null);
    if (!vin.ok) return vin;
    const fuel = await checkFuel(tx, { modelCode, ...fields });
    if (!fuel.ok) return fuel;

    const id = newId();
    const vehicle = { customerId, vin: vin.value, ...fuel.value, ...fields };
    await tx.vehicle.create({ data: { id, workshopId, ...vehicle, createdAt: now } });
    audit({ entity: "vehicle", entityId: id, after: vehicle });
    return ok({ id });
  },
});

/** Changes what is kept of a vehicle. An odometer that runs back is asked about once. */
export const editVehicle = command({
  name: "customers.edit-vehicle",
  permission: "customers:write",
  input: z.strictObject({
    vehicleId: z.uuid("Open the vehicle again."),
    revision,
    vin: vinText,
    ...vehicleFields,
    /** The person has been told that the odometer read more before, and says it is right. */
    odometerIsRight: z.boolean(),
  }),
  async run({ tx, audit }, input) {
    const { vehicleId, revision: seen, vin: written, modelCode, odometerIsRight, ...fields } = input;
    const before = await tx.vehicle.findUnique({ where: { id: vehicleId } });
    if (!before) return refuseCustomer("vehicle-not-found");
    if (before.revision !== seen) return refuseCustomer("stale-vehicle");
    const vin = await freeVin(tx, written, vehicleId);
    if (!vin.ok) return vin;
    const fuel = await checkFuel(tx, { modelCode, ...fields });
    if (!fuel.ok) return fuel;
    if (fields.odometerKm < before.odometerKm && !odometerIsRight)
      return atField("odometerKm", refuseCustomer("odometer-back", { known: before.odometerKm }));

    const after = { vin: vin.value, ...fuel.value, ...fields };
    const { count } = await tx.vehicle.updateMany({
      where: { id: vehicleId, revision: seen },
      data: { ...after, revision: { increment: 1 } },
    });
    if (count === 0) return refuseCustomer("stale-vehicle");
    const { vehicleModelId, plate, odometerKm, fuelKind, fuelOctane, uses, trailerGtmKg, alreadyFitted } =
      before;
    audit({
      entity: "vehicle",
      entityId: vehicleId,
      before: {
        vin: before.vin,
        vehicleModelId,
        plate,
        odometerKm,
        fuelKind,
        fuelOctane,
        uses,
        trailerGtmKg,
        alreadyFitted,
      },
      after,
    });
    return ok({ revision: seen + 1 });
  },
});

/** The VIN in its normal form, well-formed and not yet in this workshop. */
async function freeVin(tx: Transaction, written: string, exceptId: string | null): Promise<Result<string>> {
  const { vin, wellFormed, problems } = readVin(written);
  if (!wellFormed) return atField("vin", refuseCustomer("vin-malformed", { problems }));
  const same = await tx.vehicle.findFirst({ where: { vin }, include: { customer: true } });
  if (!same || same.id === exceptId) return ok(vin);
  return atField(
    "vin",
    refuseCustomer("vin-taken", { vehicleId: same.id, plate: same.plate, owner: same.customer.name }),
  );
}
