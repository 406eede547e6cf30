import { caution } from "./caution";
import { photo, tick, torque } from "./step";
import type { AccessWork } from "./types";

/* Teardown and refit under the vehicle and behind it. Hours are out and back together; common practice, no source. */
export const moreAccess: readonly AccessWork[] = [
  {
    id: "gearbox-out",
    name: "Gearbox out and in",
    hours: 4.6,
    rate: "workshop",
    needs: ["undertray"],
    out: [
      tick("support", "Engine held by a bar from above, gearbox strapped to the jack.", {
        cautions: [caution.hoist, caution.gearboxWeight],
      }),
      tick("plugs", "Every plug and line capped and labelled."),
    ],
    back: [
      tick("dowels", "Both dowels in, box up to the block by hand before a bolt is turned.", {
        cautions: [caution.gearboxWeight],
      }),
      torque("bell", "Bell housing bolts.", 48, 4),
      torque("shaft", "Drive shaft bolts, marks in line.", 78, 5),
    ],
  },
  {
    id: "brake-circuit",
    name: "Brake circuit opened and bled",
    hours: 0.6,
    rate: "workshop",
    needs: ["wheels"],
    out: [tick("open", "Reservoir drawn down, joints capped at once.", { cautions: [caution.brakes] })],
    back: [
      tick("bled", "Bled in the maker's order with the scan tool, no air at any corner.", {
        cautions: [caution.brakes, caution.brakeWork],
      }),
      tick("pedal", "Engine running: pedal high and firm for a minute, every joint dry."),
    ],
  },
  {
    id: "rear-bar",
    name: "Rear bar off and on",
    hours: 0.9,
    rate: "workshop",
    needs: [],
    out: [photo("gaps", "Photograph the gaps, unplug the sensors, bar off onto a padded stand.")],
    back: [tick("back", "Bar on, sensors plugged and tried, gaps as in the photograph.")],
  },
  {
    id: "tank-down",
    name: "Fuel tank down and up",
    hours: 1.4,
    rate: "workshop",
    needs: ["fuel-relief"],
    out: [
      tick("empty", "Tank emptied into a bonded container, then lowered on its strap.", {
        cautions: [caution.tankWork, caution.fuelVapour],
      }),
    ],
    back: [
      torque("straps", "Tank strap bolts.", 38, 3),
      tick("vent", "Vent and filler hoses home and clamped; no smell after an hour.", {
        cautions: [caution.fuelVapour],
      }),
    ],
  },
  {
    id: "axle-drained",
    name: "Axles drained and filled",
    hours: 0.3,
    rate: "workshop",
    needs: [],
    out: [tick("drain", "Filler plug out first, then the drain; metal on the magnet photographed.")],
    back: [torque("plugs", "Axle plugs, new washers.", 35, 3, { oneUsePart: "plug washers" })],
  },
];
