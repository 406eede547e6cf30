import { vin as readVin } from "@buildproof/compliance";
import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { refuseCustomer } from "./customer-refusals";

/** A vehicle with what its VIN says, its builds and its jobs. */
export const showVehicle = query({
  name: "customers.show-vehicle",
  permission: "customers:read",
  input: z.strictObject({ vehicleId: z.uuid("Open the vehicle from its customer.") }),
  async run({ tx }, { vehicleId }) {
    const row = await tx.vehicle.findUnique({
      where: { id: vehicleId },
      include: {
        customer: true,
        vehicleModel: true,
        builds: { orderBy: { number: "desc" } },
        jobs: { orderBy: { number: "desc" } },
      },
    });
    if (!row) return refuseCustomer("vehicle-not-found");
    const { id, vin, plate, odometerKm, fuelKind, fuelOctane, uses, trailerGtmKg, alreadyFitted, revision } =
      row;
    const { checkDigit, modelYears, region, country, notes, problems } = readVin(vin);
    return ok({
      id,
      vin,
      plate,
      odometerKm,
      fuelKind,
      fuelOctane,
      uses,
      trailerGtmKg,
      alreadyFitted,
      revision,
      customer: { id: row.customer.id, name: row.customer.name },
      model: { code: row.vehicleModel.code, name: row.vehicleModel.name, engine: row.vehicleModel.engine },
      vinSays: { checkDigit, modelYears, region, country, remarks: [...problems, ...notes] },
      builds: row.builds.map((build) => ({ id: build.id, number: build.number, goal: build.goal })),
      jobs: row.jobs.map((job) => ({ id: job.id, number: job.number, status: job.status })),
    });
  },
});

/** The models that the workshop builds. */
export const listModels = query({
  name: "customers.list-models",
  permission: "customers:read",
  input: z.strictObject({}),
  async run({ tx }) {
    const models = await tx.vehicleModel.findMany({ orderBy: { name: "asc" } });
    return ok({ models: models.map(({ code, name, engine }) => ({ code, name, engine })) });
  },
});
