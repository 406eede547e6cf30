import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { atField } from "../core/at-field";
import { ok, type Result } from "../core/result";
import { refuseCustomer } from "./customer-refusals";
import type { FuelKind } from "./vehicle-fields";

const fuelName: Readonly<Record<FuelKind, string>> = {
  petrol: "petrol",
  e10: "E10",
  e85: "E85",
  diesel: "diesel",
};

/** Octane goes with petrol and its blends, and with nothing else; and the fuel with the engine. */
export async function checkFuel(
  tx: Transaction,
  vehicle: { readonly modelCode: string; readonly fuelKind: FuelKind; readonly fuelOctane: number | null },
): Promise<Result<{ readonly vehicleModelId: string }>> {
  const model = await tx.vehicleModel.findFirst({ where: { code: vehicle.modelCode } });
  if (!model) return atField("modelCode", refuseCustomer("model-unknown"));
  const { fuelKind: burns } = z
    .object({ fuelKind: z.enum(["petrol", "diesel"]).optional() })
    .parse(model.figures);
  const isDiesel = vehicle.fuelKind === "diesel";
  if (burns && (burns === "diesel") !== isDiesel)
    return atField("fuelKind", refuseCustomer("fuel-of-model", { model: model.name, fuel: burns }));
  if (isDiesel && vehicle.fuelOctane !== null)
    return atField("fuelOctane", refuseCustomer("octane-of-diesel"));
  if (!isDiesel && vehicle.fuelOctane === null)
    return atField("fuelOctane", refuseCustomer("octane-missing", { fuel: fuelName[vehicle.fuelKind] }));
  return ok({ vehicleModelId: model.id });
}
