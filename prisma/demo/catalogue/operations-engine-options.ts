import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { hold, measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Pulleys, cooling, intake, fuel and ignition beside the kits. Torques are the maker's own figures, held here as data. */
export const engineOptionOperations: readonly Operation[] = [
  onHoist({
    id: "change-blower-pulley",
    name: "Change the blower pulley",
    ownHours: 0.6,
    access: ["belt-drive"],
    order: 78,
    steps: [
      tick("puller", "Pulley drawn off with its own puller; no hammer on the rotor shaft."),
      tick("oil", "Gear oil drained and filled to the plug.", { oneUsePart: "blower gear oil" }),
      measure("seat", "Pulley pressed home, gap to the case.", "mm", 0.9, 1.3, { target: 1.1 }),
      measure("size", "Pulley diameter over the ribs, as ordered.", "mm", 80, 100),
    ],
  }),
  onHoist({
    id: "fit-wrap-idler",
    name: "Fit belt wrap idler",
    ownHours: 0.4,
    access: ["belt-drive"],
    order: 81,
    steps: [
      torque("idler", "Idler bolt.", 48, 3),
      measure("wrap", "Belt wrap on the blower pulley.", "°", 190, 240, { cautions: [caution.rotating] }),
    ],
  }),
  onHoist({
    id: "fit-radiator",
    name: "Fit radiator",
    ownHours: 1.6,
    access: ["front-end", "coolant"],
    order: 74,
    steps: [
      tick("condenser", "Condenser hangs with its lines closed while the radiator is out.", {
        cautions: [caution.refrigerant, caution.hotCoolant],
      }),
      torque("mounts", "Radiator mounts.", 9, 1),
      measure("pressure", "Circuit at 120 kPa: loss over ten minutes.", "kPa", 0, 3),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-radiator-fans",
    name: "Fit electric fans",
    ownHours: 1.4,
    access: ["fan"],
    order: 75,
    skill: "electrical",
    steps: [
      tick("feed", "Own fused feed, relay by the battery, loom clear of the belt.", {
        cautions: [caution.battery, caution.fan],
      }),
      measure("switch", "First fan comes on at.", "°C", 92, 98),
      measure("current", "Both fans running.", "A", 10, 18),
    ],
  }),
  onHoist({
    id: "fit-oil-cooler",
    name: "Fit engine oil cooler",
    ownHours: 2.2,
    access: ["front-end"],
    order: 76,
    steps: [
      torque("adaptor", "Filter adaptor.", 35, 3),
      tick("lines", "Lines clear of steering and tyres at full lock; new seals.", {
        oneUsePart: "cooler line seals",
      }),
      measure("pressure", "Oil pressure at warm idle.", "kPa", 150, 400),
      tick("dry", "Dry after ten minutes hot.", { cautions: [caution.rotating] }),
    ],
  }),
  onHoist({
    id: "change-coolant",
    name: "Change coolant",
    ownHours: 0.3,
    access: ["coolant"],
    order: 73,
    steps: [
      measure("freeze", "Freezing point of the fill.", "°C", -40, -25, { cautions: [caution.hotCoolant] }),
    ],
  }),
  onHoist({
    id: "fit-raised-intake",
    name: "Fit raised intake",
    ownHours: 3.2,
    access: [],
    order: 62,
    place: "floor",
    steps: [
      tick("template", "Template held to the guard twice before the first hole; bare edges sealed."),
      torque("bolts", "Body bolts.", 8, 1),
      tick("smoke", "Smoke test: nothing escapes between its mouth and the airbox."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-panel-filter",
    name: "Change panel filter",
    ownHours: 0.2,
    access: [],
    place: "floor",
    order: 63,
    steps: [tick("seal", "Airbox wiped out, filter seal lies flat all round, clips home.")],
  }),
  onHoist({
    id: "fit-oil-separator",
    name: "Fit crankcase oil separator",
    ownHours: 1.1,
    access: [],
    order: 64,
    place: "floor",
    steps: [
      tick("closed", "Outlet goes back to the intake ahead of the blower or turbo, not to the open air.", {
        cautions: [caution.emissions],
      }),
      measure("vacuum", "Crankcase vacuum at warm idle.", "kPa", 0.2, 3),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-injectors-gt44",
    name: "Fit port injectors",
    ownHours: 1.9,
    access: ["fuel-relief"],
    order: 55,
    steps: [
      serial("set", "Set number of the matched injectors.", {
        cautions: [caution.fuelPressure, caution.fuelVapour],
      }),
      tick("seals", "New seals oiled, injectors turn by hand under the rail.", {
        oneUsePart: "injector seals",
        cautions: [caution.oneUse],
      }),
      torque("rail", "Fuel rail bolts.", 10, 1),
      hold("fuel-dry", "Second person finds every fuel joint dry, lamp and clean cloth.", {
        cautions: [caution.fuelVapour],
      }),
    ],
  }),
  onHoist({
    id: "fit-rail-sensor",
    name: "Fit rail pressure sensor",
    ownHours: 0.5,
    access: ["fuel-relief"],
    order: 53,
    steps: [
      serial("sensor", "Sensor serial number.", { cautions: [caution.fuelPressure] }),
      torque("sensor-torque", "Sensor in the rail.", 32, 2),
      measure("reading", "Reads against the gauge at idle, difference.", "MPa", 0, 0.3),
    ],
  }),
  onHoist({
    id: "fit-pump-controller",
    name: "Fit tank pump controller",
    ownHours: 1.3,
    access: [],
    order: 58,
    skill: "electrical",
    steps: [
      tick("feed", "Feed fused at the battery, earth at the body, no joint under the tank.", {
        cautions: [caution.battery, caution.fuelVapour],
      }),
      measure("drop", "Voltage drop to the pump at full flow.", "V", 0, 0.4),
    ],
  }),
  onHoist({
    id: "fit-four-plugs",
    name: "Fit spark plugs, four",
    ownHours: 0.7,
    access: [],
    order: 90,
    place: "floor",
    steps: [
      tick("cold", "Engine cold, wells blown out before a plug is loosened."),
      torque("plugs", "Plugs, dry threads, all four.", 22, 2, { oneUsePart: "spark plugs" }),
    ],
  }),
  onHoist({
    id: "fit-coils",
    name: "Fit coils, eight",
    ownHours: 0.4,
    access: ["coil-covers"],
    order: 91,
    place: "floor",
    steps: [
      tick("boots", "Boots greased, coils in cylinder order."),
      measure("misfires", "Misfire count over ten minutes at hot idle.", "counts", 0, 0, { target: 0 }),
    ],
  }),
];
