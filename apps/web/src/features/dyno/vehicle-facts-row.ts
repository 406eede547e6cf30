import type { VehicleFacts } from "@buildproof/workshop";
import { figureText } from "@/design/figure-text";

/** What a dyno sheet must say of the vehicle. */
export function vehicleFactsRow({ plate, vin, odometerKm, fuel }: VehicleFacts) {
  return [
    { label: "Plate", value: plate },
    { label: "VIN", value: vin },
    { label: "Odometer", value: `${figureText(odometerKm)} km` },
    { label: "Fuel used", value: fuel },
  ];
}
