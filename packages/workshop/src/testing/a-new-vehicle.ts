import { addCustomer } from "../customers/save-customer";
import { addVehicle } from "../customers/save-vehicle";
import type { demoWorkshop } from "./demo-workshop";

/** A Ridgewold that its new owner has just brought to the desk; say what is different about it. */
export async function aNewVehicle(
  trial: ReturnType<typeof demoWorkshop>,
  different: Readonly<Record<string, unknown>> = {},
): Promise<{ readonly customerId: string; readonly vehicleId: string }> {
  const customer = await trial.done("desk", addCustomer, {
    name: "Perpetua Lindqvist",
    phone: "0491 570 156",
    email: "",
    address: "",
    notes: "",
  });
  const vehicle = await trial.done("desk", addVehicle, {
    customerId: customer.id,
    ...ridgewold,
    ...different,
  });
  return { customerId: customer.id, vehicleId: vehicle.id };
}

/** The VIN is the published worked example of a check digit (49 CFR 565.15). */
export const ridgewold = {
  vin: "1M8GDM9AXKP042788",
  modelCode: "ridgewold-57",
  plate: "7xk 2qd",
  odometerKm: 24_310,
  fuelKind: "petrol",
  fuelOctane: 98,
  uses: ["towing"],
  trailerGtmKg: null,
  alreadyFitted: "",
} as const;
