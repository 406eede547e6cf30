import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { hold, measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Diesel injection, tanks, controllers and electrics. Torques are the maker's own figures, held here as data. */
export const dieselElectricOperations: readonly Operation[] = [
  onHoist({
    id: "test-diesel-injectors",
    name: "Test injector balance and leak-off",
    ownHours: 1.1,
    access: [],
    stage: "inspection",
    order: 15,
    place: "floor",
    steps: [
      measure("balance", "Injector correction at warm idle, worst cylinder.", "mm³", -2, 2, {
        cautions: [caution.fuelPressure],
      }),
      measure("leak-off", "Leak-off in a minute, most less least.", "mL", 0, 15),
      measure("filter-load", "Soot in the diesel filter.", "g", 0, 24),
    ],
  }),
  onHoist({
    id: "fit-diesel-injectors",
    name: "Fit diesel injectors",
    ownHours: 3.4,
    access: ["fuel-relief"],
    order: 55,
    steps: [
      tick("wells", "Wells vacuumed before an injector lifts; bores capped.", {
        cautions: [caution.fuelPressure],
      }),
      serial("codes", "Correction codes of the four injectors, in cylinder order."),
      torque("clamps", "Clamp bolts, new washers under each.", 26, 2, {
        oneUsePart: "injector washers",
        cautions: [caution.oneUse],
      }),
      torque("pipes", "New high-pressure pipes.", 35, 2, { oneUsePart: "high-pressure pipes" }),
      hold("fuel-dry", "Second person finds every joint dry at idle and at 100 MPa, from a distance.", {
        cautions: [caution.fuelPressure],
      }),
    ],
  }),
  onHoist({
    id: "fit-diesel-prefilter",
    name: "Fit diesel pre-filter",
    ownHours: 1.2,
    access: [],
    order: 57,
    steps: [
      tick("suction", "In the suction line, clamps doubled, bled without a bubble."),
      tick("alarm", "Water alarm sounds with the probe in water.", { cautions: [caution.battery] }),
    ],
  }),
  onHoist({
    id: "fit-long-range-tank",
    name: "Fit long-range tank",
    ownHours: 3.8,
    access: ["tank-down"],
    order: 59,
    steps: [
      tick("clear", "25 mm clear of exhaust, shaft and axle at full travel.", {
        cautions: [caution.tankWork],
      }),
      torque("mounts", "Tank mounts.", 55, 4),
      measure("vent", "Vent test: pressure held for five minutes.", "kPa", 1.5, 3.5),
      hold("tank", "Second person looks at clearances, vent and roll-over valve.", {
        cautions: [caution.fuelVapour],
      }),
    ],
  }),
  onHoist({
    id: "rewrite-calibration",
    name: "Write the calibration again",
    ownHours: 0.7,
    access: ["battery-support"],
    stage: "first-start",
    order: 111,
    skill: "calibration",
    place: "floor",
    steps: [
      measure("supply", "Supply voltage during the write.", "V", 13.2, 14.8, {
        cautions: [caution.flashing],
      }),
      serial("software", "Software number as found, after the dealer's update."),
      serial("revision", "Revision written and its file hash.", { cautions: [caution.emissions] }),
    ],
  }),
  onHoist({
    id: "programme-key",
    name: "Programme a key",
    ownHours: 0.5,
    access: ["battery-support"],
    order: 108,
    skill: "electrical",
    place: "floor",
    steps: [tick("keys", "All keys of the vehicle are here; each starts the engine, twice.")],
  }),
  onHoist({
    id: "fit-second-battery",
    name: "Fit second battery and charger",
    ownHours: 3.2,
    access: [],
    skill: "electrical",
    steps: [
      tick("tray", "Tray bolted to the body, not to the guard; battery vents outside.", {
        cautions: [caution.battery],
      }),
      tick("fuses", "Fuse within 200 mm of each positive post, cable in conduit."),
      measure("charge", "Charger output, engine running.", "V", 13.8, 14.6),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-temperature-display",
    name: "Fit oil temperature display",
    ownHours: 1.1,
    access: ["dash-trim"],
    skill: "electrical",
    steps: [
      tick("place", "Readable from the driver's seat, not over an airbag.", { cautions: [caution.airbag] }),
      measure("reading", "Against the scan tool, difference.", "°C", 0, 3),
    ],
  }),
  onHoist({
    id: "fit-cooler-fan",
    name: "Fit gearbox cooler fan",
    ownHours: 0.9,
    access: ["front-end"],
    order: 71,
    skill: "electrical",
    steps: [
      measure("switch", "Comes on at an oil temperature of.", "°C", 85, 95, { cautions: [caution.fan] }),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-van-camera",
    name: "Fit trailer camera",
    ownHours: 1.8,
    access: ["rear-bar", "dash-trim"],
    skill: "electrical",
    steps: [
      tick("display", "Display below the line of sight; picture only of what is behind.", {
        cautions: [caution.airbag],
      }),
      tick("lead", "Trailer lead tried with the trailer on, full lock both ways."),
    ],
  }),
];
