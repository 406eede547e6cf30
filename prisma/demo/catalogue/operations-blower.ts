import { caution } from "./caution";
import { hold, measure, photo, serial, tick, torque } from "./step";
import type { Operation, ProcedureStep } from "./types";

const blowerSteps: readonly ProcedureStep[] = [
  tick(
    "kit-list",
    "Kit opened and counted against its list; rotor turns by hand, no mark on the rotor tips.",
  ),
  serial("blower-serial", "Blower serial number."),
  photo("faces", "Photograph both head faces, clean and dry, all port caps out.", {
    cautions: [caution.fuelVapour],
  }),
  tick("gaskets", "New gaskets laid dry, tabs outwards.", { oneUsePart: "intake gaskets" }),
  tick("lower", "Lower the blower with the hoist bar, two people; no hose or loom under it."),
  torque("manifold-first", "Manifold bolts, centre outwards, first pass.", 12, 1),
  torque("manifold-final", "Manifold bolts, centre outwards, final pass.", 25, 2),
  tick(
    "injector-seals",
    "Injectors in with new seals and clips, rail bolted finger-tight until all are home.",
    { oneUsePart: "injector seals", cautions: [caution.oneUse] },
  ),
  torque("rail-bolts", "Fuel rail bolts.", 23, 2, { cautions: [caution.fuelPressure] }),
  torque("throttle", "Throttle body bolts.", 10, 1),
  tick("bypass", "Bypass actuator moves freely through its whole travel by hand vacuum."),
  measure("bonnet-gap", "Bonnet clearance over the blower, clay at the highest point.", "mm", 12, 60),
  photo("fitted", "Photograph hoses, looms and brackets as fitted."),
  hold(
    "before-close",
    "Second person checks the torque log, port-cap count, fuel joints and loom routing before the front closes.",
  ),
];

const fitBlower = (id: string, name: string, ownHours: number): Operation => ({
  id,
  name,
  ownHours,
  rate: "workshop",
  access: ["front-end", "intake", "coolant", "fuel-relief", "belt-drive"],
  stage: "fitting",
  order: 60,
  skill: "mechanical",
  place: "hoist",
  steps: blowerSteps,
});

/** Air side of a boosted build. Torques are the kit maker's own figures, held here as data. */
export const blowerOperations: readonly Operation[] = [
  {
    id: "pin-crank-pulley",
    name: "Pin the crank pulley, new bolt",
    ownHours: 1.6,
    rate: "workshop",
    access: ["belt-drive", "fan", "undertray"],
    stage: "fitting",
    order: 40,
    skill: "mechanical",
    place: "hoist",
    steps: [
      tick("lock", "Crank locked with the maker's tool, not by a gear.", {
        cautions: [caution.fan, caution.rotating],
      }),
      tick("jig", "Drill jig seated flat on the pulley nose."),
      measure("pin-hole-1", "Reamed hole 1, depth.", "mm", 17.5, 18.5, { target: 18 }),
      measure("pin-hole-2", "Reamed hole 2, depth.", "mm", 17.5, 18.5, { target: 18 }),
      tick("chips", "Every chip out with a magnet and vacuum; seal lip looked at under a lamp."),
      torque("crank-bolt", "New crank bolt, first stage.", 50, 3, {
        oneUsePart: "crank bolt",
        cautions: [caution.oneUse],
      }),
      measure("crank-angle", "New crank bolt, turned further by the angle gauge.", "°", 118, 122, {
        target: 120,
      }),
      hold("crank-witness", "Second person reads the angle gauge and marks the bolt head with paint."),
    ],
  },
  fitBlower("fit-blower-24", "Fit blower 2.4", 11.5),
  fitBlower("fit-blower-19", "Fit blower 1.9", 10.5),
  {
    id: "fit-charge-cooler",
    name: "Fit charge cooler",
    ownHours: 4.2,
    rate: "workshop",
    access: ["front-end", "coolant"],
    stage: "fitting",
    order: 70,
    skill: "mechanical",
    place: "hoist",
    steps: [
      tick("brackets", "Brackets on the carrier, no contact with condenser or horn.", {
        cautions: [caution.refrigerant],
      }),
      torque("core", "Heat exchanger bolts, four.", 10, 1),
      tick("pump", "Coolant pump below the reservoir, arrow with the flow, isolators in."),
      tick("hoses", "Hoses clear of belts and edges by 15 mm; every clamp behind its bead."),
      measure("pressure-test", "Circuit pressure test: loss over ten minutes at 100 kPa.", "kPa", 0, 3),
      measure("vacuum-fill", "Vacuum before filling.", "kPa below ambient", 80, 95),
      measure("flow", "Pump running: return flow at the reservoir.", "L/min", 12, 30, {
        cautions: [caution.fan],
      }),
      photo("fitted", "Photograph the cooler and its hoses before the bar goes on."),
    ],
  },
  {
    id: "fit-belt-and-tensioner",
    name: "Fit blower belt and tensioner",
    ownHours: 0.4,
    rate: "workshop",
    access: ["belt-drive"],
    stage: "fitting",
    order: 80,
    skill: "mechanical",
    place: "hoist",
    steps: [
      torque("tensioner", "Tensioner pivot bolt.", 48, 3),
      measure("wrap", "Belt wrap on the blower pulley.", "°", 160, 240, { cautions: [caution.rotating] }),
      measure("alignment", "Pulley alignment by straight edge.", "mm", 0, 0.5),
    ],
  },
  {
    id: "fit-hot-kit",
    name: "Fit hot-climate kit",
    ownHours: 1.1,
    rate: "workshop",
    access: ["front-end", "coolant"],
    stage: "fitting",
    order: 72,
    skill: "mechanical",
    place: "hoist",
    steps: [
      torque("core", "Second heat exchanger bolts.", 10, 1),
      measure("flow", "Return flow at the reservoir.", "L/min", 12, 30, { cautions: [caution.fan] }),
      photo("fitted", "Photograph the second exchanger as fitted."),
    ],
  },
  {
    id: "fit-plugs",
    name: "Fit spark plugs, eight",
    ownHours: 1.2,
    rate: "workshop",
    access: ["coil-covers"],
    stage: "fitting",
    order: 90,
    skill: "mechanical",
    place: "hoist",
    steps: [
      tick("cold", "Engine cold, wells blown out before a plug is loosened."),
      measure("gap", "Gap, every plug, widest of the eight.", "mm", 0.55, 0.72),
      torque("plugs", "Plugs, dry threads, all eight.", 18, 2, { oneUsePart: "spark plugs" }),
      tick("order", "Coils back in cylinder order, boots seated."),
    ],
  },
];
