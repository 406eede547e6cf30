import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { hold, measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Wheels, suspension and brakes. Torques are the maker's own figures, held here as data. */
export const wheelBrakeOperations: readonly Operation[] = [
  onHoist({
    id: "fit-four-tyres",
    name: "Fit and balance four tyres",
    ownHours: 1.5,
    access: ["wheels"],
    place: "floor",
    steps: [
      tick("direction", "Direction of rotation and inner side as marked."),
      measure("pressure", "Cold pressure, all four, lowest.", "kPa", 220, 280),
      measure("nuts", "Wheel nuts checked again on the ground.", "N·m", 114, 126, { target: 120 }),
    ],
  }),
  onHoist({
    id: "fit-wheels",
    name: "Fit wheels",
    ownHours: 0.6,
    access: ["wheels"],
    place: "floor",
    steps: [
      tick("seat", "Hub rings in, nut seat and thread match; at least 7 turns by hand."),
      measure("clear", "Clear of caliper and arm, least.", "mm", 3, 30),
      tick("lock", "Full lock both ways and full droop: nothing touches.", { cautions: [caution.hoist] }),
    ],
  }),
  onHoist({
    id: "learn-pressure-sensors",
    name: "Teach tyre pressure sensors",
    ownHours: 0.4,
    access: [],
    place: "floor",
    skill: "electrical",
    steps: [serial("ids", "Sensor numbers by position."), tick("lamp", "Lamp out after the drive.")],
  }),
  onHoist({
    id: "fit-springs-gt44",
    name: "Fit springs, four",
    ownHours: 3.6,
    access: ["wheels"],
    steps: [
      tick("compress", "Springs compressed in the cage.", { cautions: [caution.springs] }),
      torque("top", "Top mount nuts.", 45, 3),
      measure("travel", "Bump travel left of the standard travel.", "%", 67, 100),
      measure("height-spread", "Ride height, left to right difference.", "mm", 0, 6),
    ],
  }),
  onHoist({
    id: "fit-dampers",
    name: "Fit dampers, four",
    ownHours: 2.8,
    access: ["wheels"],
    steps: [
      tick("compress", "Front springs held in the cage.", { cautions: [caution.springs] }),
      torque("lower", "Lower bolts, wheels loaded.", 98, 5),
      tick("bounce", "Each corner settles in one movement."),
    ],
  }),
  onHoist({
    id: "fit-upper-arms",
    name: "Fit upper control arms",
    ownHours: 1.9,
    access: ["wheels"],
    steps: [
      torque("joint", "Ball joint nut, new pin.", 95, 5, { oneUsePart: "split pin" }),
      torque("pivot", "Pivot bolts, at ride height.", 120, 6),
      hold("arms", "Second person marks every fastener."),
    ],
  }),
  onHoist({
    id: "fit-air-springs",
    name: "Fit helper air springs",
    ownHours: 1.7,
    access: ["wheels"],
    steps: [
      tick("lines", "Lines away from exhaust and shaft, valves labelled left and right."),
      measure("leak", "Loss over half an hour at 200 kPa.", "kPa", 0, 5),
    ],
  }),
  onHoist({
    id: "fit-sway-bar",
    name: "Fit rear sway bar",
    ownHours: 1.2,
    access: [],
    steps: [torque("links", "Link nuts, wheels loaded.", 55, 4, { cautions: [caution.hoist] }), fitted],
  }),
  onHoist({
    id: "fit-front-brakes",
    name: "Fit front brake kit",
    ownHours: 2.6,
    access: ["brake-circuit"],
    order: 64,
    steps: [
      serial("calipers", "Caliper serial numbers.", { cautions: [caution.brakeWork] }),
      torque("caliper", "New caliper bolts.", 115, 6, {
        oneUsePart: "caliper bolts",
        cautions: [caution.oneUse],
      }),
      torque("hose", "Hose banjo, new washers.", 32, 3, { oneUsePart: "sealing washers" }),
      measure("runout", "Disc run-out, worst.", "mm", 0, 0.06),
      hold("brakes", "Second person: bolts marked, hoses free at lock and droop, pedal firm.", {
        cautions: [caution.brakes],
      }),
    ],
  }),
  onHoist({
    id: "fit-brake-pads",
    name: "Fit brake pads",
    ownHours: 1.2,
    access: ["wheels"],
    order: 65,
    steps: [
      measure("disc", "Disc thickness over the maker's least, thinnest.", "mm", 0, 12, {
        cautions: [caution.brakeWork],
      }),
      torque("slide", "Slide pin bolts.", 35, 3),
      tick("pedal", "Pedal pumped firm before the vehicle moves.", { cautions: [caution.brakes] }),
    ],
  }),
  onHoist({
    id: "fit-brake-discs",
    name: "Fit front discs",
    ownHours: 1.1,
    access: ["wheels"],
    order: 63,
    steps: [
      measure("hub", "Hub face clean, disc run-out, worst.", "mm", 0, 0.06),
      torque("carrier", "New carrier bolts.", 108, 6, {
        oneUsePart: "carrier bolts",
        cautions: [caution.oneUse, caution.brakeWork],
      }),
    ],
  }),
  onHoist({
    id: "fit-brake-hoses",
    name: "Fit brake hoses",
    ownHours: 1.3,
    access: ["brake-circuit"],
    order: 66,
    steps: [
      tick("marked", "Each hose carries its test mark."),
      torque("banjo", "Banjo bolts, new washers.", 32, 3, { oneUsePart: "sealing washers" }),
      measure("slack", "Slack at full droop and lock, least.", "mm", 15, 80, { cautions: [caution.hoist] }),
      hold("hoses", "Second person: no twist, nothing touches, every joint dry under pressure.", {
        cautions: [caution.brakeWork],
      }),
    ],
  }),
  onHoist({
    id: "change-brake-fluid",
    name: "Change brake fluid",
    ownHours: 0.3,
    access: ["brake-circuit"],
    order: 67,
    steps: [measure("water", "Water in the new fluid at the last corner.", "%", 0, 1)],
  }),
];
