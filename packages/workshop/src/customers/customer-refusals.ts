import { refusals } from "../core/result";
import { staleSentence } from "../core/revision";

/** What is refused about customers and vehicles, in words. */
export const refuseCustomer = refusals({
  "customer-not-found": () =>
    "There is no such customer in this workshop. Find them by name, phone or e-mail.",
  "vehicle-not-found": () => "There is no such vehicle in this workshop. Find it by plate or VIN.",
  "model-unknown": () => "Choose the model of the vehicle from the list.",
  "vin-malformed": (d: { problems: readonly string[] }) => d.problems.join(" "),
  "vin-taken": (d: { vehicleId: string; plate: string; owner: string }) =>
    `This VIN is already here: ${d.plate || "no plate"}, of ${d.owner}. Open that vehicle instead of adding it again.`,
  "octane-missing": (d: { fuel: string }) =>
    `Choose the octane of the ${d.fuel} that the owner really buys: 91, 95, 98 or what stands on the pump.`,
  "octane-of-diesel": () => "Diesel has no octane number. Leave the octane empty.",
  "fuel-of-model": (d: { model: string; fuel: string }) =>
    `The ${d.model} runs on ${d.fuel}. Choose that fuel, or another model.`,
  "odometer-back": (d: { known: number }) =>
    `The odometer read ${new Intl.NumberFormat("en-AU").format(d.known)} km before. Check the reading; if it really is lower, tick that it is right and save again.`,
  "stale-customer": () => staleSentence("customer"),
  "stale-vehicle": () => staleSentence("vehicle"),
});
