import { caution } from "./caution";
import { hold, measure, photo, tick } from "./step";
import type { Operation } from "./types";

/** Before anything is ordered: is this vehicle fit to be built on, and what does it make as it stands? */
export const inspectionOperations: readonly Operation[] = [
  {
    id: "inspect-vehicle",
    name: "Pre-build inspection",
    ownHours: 2.4,
    rate: "workshop",
    access: ["coil-covers-inspection"],
    stage: "inspection",
    order: 10,
    skill: "mechanical",
    place: "hoist",
    steps: [
      photo(
        "walk-round",
        "Walk round: photograph all sides, wheels, and any damage, with the owner where possible.",
      ),
      measure("odometer", "Read the odometer.", "km", 0, 500_000),
      measure("ethanol", "Draw a fuel sample and read its ethanol content.", "% by volume", 0, 10, {
        cautions: [caution.fuelVapour],
      }),
      tick(
        "codes",
        "Read and save all codes, freeze frames and software numbers; recalls and updates open are noted.",
      ),
      measure("misfires", "Misfire count over ten minutes, hot idle and light load.", "counts", 0, 0, {
        target: 0,
      }),
      measure("trim-bank-1", "Long plus short fuel trim, bank 1, warm at 2,500 rpm.", "%", -8, 8, {
        target: 0,
      }),
      measure("trim-bank-2", "Long plus short fuel trim, bank 2, warm at 2,500 rpm.", "%", -8, 8, {
        target: 0,
      }),
      measure("leak-down-worst", "Leak-down at 690 kPa, worst cylinder.", "%", 0, 12, {
        cautions: [caution.rotating],
      }),
      measure("leak-down-spread", "Leak-down, worst less best cylinder.", "points", 0, 6),
      measure("cooling-pressure", "Cooling system pressure loss over ten minutes.", "kPa", 0, 7, {
        cautions: [caution.hotCoolant],
      }),
      measure("rail-idle", "Rail pressure at warm idle.", "MPa", 3.5, 6),
      measure(
        "bonnet-clearance",
        "Bonnet clearance over the intake, clay at the highest point.",
        "mm",
        12,
        60,
      ),
      tick(
        "underneath",
        "Underneath: oil, coolant, gearbox, mounts, axle boots, fasteners that look seized.",
        { cautions: [caution.hoist] },
      ),
      photo("plugs", "Photograph the eight plugs in cylinder order."),
      hold(
        "fit-to-build",
        "Second person reads the figures: fit, watch or stop, and the desk is told before anything is ordered.",
      ),
    ],
  },
  {
    id: "measure-baseline",
    name: "Baseline on the dyno",
    ownHours: 0.7,
    rate: "dyno",
    access: ["hub-strap-in-baseline"],
    stage: "inspection",
    order: 20,
    skill: "dyno",
    place: "dyno",
    steps: [
      measure("gearbox-oil", "Gearbox oil temperature before the first run.", "°C", 80, 95),
      measure("inlet-air", "Air temperature at the inlet, probe in the airbox mouth.", "°C", 15, 35),
      measure("barometer", "Barometer in the cell.", "kPa", 90, 105),
      measure("humidity", "Relative humidity in the cell.", "%", 0, 100),
      tick("gear", "Gear nearest 1:1, converter locked, engine and hub speed within 1 % of the ratio.", {
        cautions: [caution.dynoRestraint],
      }),
      measure("ramp", "Ramp rate set for all runs, before and after.", "rpm/s", 350, 450, { target: 400 }),
      measure("spread", "Three runs imported: spread of corrected peak power.", "%", 0, 2, {
        cautions: [caution.dynoAir],
      }),
    ],
  },
];
