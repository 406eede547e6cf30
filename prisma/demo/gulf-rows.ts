import { addCustomer, addVehicle } from "./customer-rows";
import { packageItems } from "./package-items";
import { addBuild, addQuote } from "./quote-rows";
import type { Scene } from "./scene";

/** One customer, one vehicle and one quote, which the first workshop must never see. */
export function addGulfQuote({ workshop, catalogue, staff }: Scene): void {
  const today = workshop.local.dayOf(workshop.anchor);
  const at = workshop.local.at(today.add({ days: -3 }), "10:00");
  const customer = addCustomer(workshop, {
    name: "H. Rashidi",
    phone: "+971 4 555 0177",
    email: "rashidi@customers.example",
    at,
  });
  const vehicle = addVehicle(workshop, catalogue, {
    customer,
    model: "ridgewold-57",
    plate: "G 50142",
    odometerKm: 22_700,
    uses: ["touring", "towing"],
    at,
  });
  const build = addBuild(workshop, catalogue, {
    vehicle,
    goal: "Climb the pass with the trailer on in August.",
    packageCode: "long-haul-19",
    itemCodes: packageItems("long-haul-19"),
    at,
  });
  addQuote(workshop, build, [{ status: "issued", at, issuedById: staff.person("lena") }]);
}
