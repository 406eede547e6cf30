import { vin as readVin } from "@buildproof/compliance";
import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";

/** What a VIN says about itself, and whether the vehicle is here already. */
export const lookUpVin = query({
  name: "customers.look-up-vin",
  permission: "customers:read",
  input: z.strictObject({ vin: z.string().max(40, "A VIN has 17 characters.") }),
  async run({ tx }, { vin: written }) {
    const read = readVin(written);
    const known = read.wellFormed
      ? await tx.vehicle.findFirst({ where: { vin: read.vin }, include: { customer: true } })
      : null;
    return ok({
      ...read,
      known: known ? { vehicleId: known.id, plate: known.plate, owner: known.customer.name } : null,
    });
  },
});
