import { catalogue } from "./catalogue/catalogue";
import type { ModelId } from "./catalogue/types";
import type { CatalogueRows } from "./catalogue-rows";
import type { DemoWorkshop } from "./demo-workshop";
import { inventedVin } from "./invented-vin";

export type Owner = { readonly id: string; readonly name: string };
export type OwnedVehicle = {
  readonly id: string;
  readonly customer: Owner;
  readonly model: ModelId;
  readonly odometerKm: number;
};

export function addCustomer(
  { rows, id: workshopId, newId }: DemoWorkshop,
  customer: {
    readonly name: string;
    readonly phone: string;
    readonly email: string;
    readonly address?: string;
    readonly notes?: string;
    readonly at: Date;
  },
): Owner {
  const { at, address = "", notes = "", ...rest } = customer;
  const id = newId(at);
  rows.add("customer", { id, workshopId, ...rest, address, notes, createdAt: at });
  return { id, name: customer.name };
}

export function addVehicle(
  workshop: DemoWorkshop,
  { modelId }: CatalogueRows,
  vehicle: {
    readonly customer: Owner;
    readonly model: ModelId;
    readonly odometerKm: number;
    readonly uses: readonly ("towing" | "touring" | "street" | "track")[];
    readonly plate?: string;
    readonly octane?: number;
    readonly alreadyFitted?: string;
    readonly at: Date;
  },
): OwnedVehicle {
  const { rows, id: workshopId, newId, random } = workshop;
  const id = newId(vehicle.at);
  const isDiesel = catalogue.models.find((model) => model.id === vehicle.model)?.fuelKind === "diesel";
  rows.add("vehicle", {
    id,
    workshopId,
    customerId: vehicle.customer.id,
    vehicleModelId: modelId(vehicle.model),
    vin: inventedVin(random),
    plate: vehicle.plate ?? inventedPlate(workshop),
    odometerKm: vehicle.odometerKm,
    fuelKind: isDiesel ? "diesel" : "petrol",
    fuelOctane: isDiesel ? null : (vehicle.octane ?? 98),
    uses: [...vehicle.uses],
    alreadyFitted: vehicle.alreadyFitted ?? "",
    createdAt: vehicle.at,
  });
  return { id, customer: vehicle.customer, model: vehicle.model, odometerKm: vehicle.odometerKm };
}

/** A pattern that no plate office uses here: 1AB 2CD. */
function inventedPlate({ random }: DemoWorkshop): string {
  const letter = () => random.pick([..."ABCDEFGHJKLMNPRSTVWXYZ"]);
  const digit = () => random.integer(1, 9);
  return `${digit()}${letter()}${letter()} ${digit()}${letter()}${letter()}`;
}
