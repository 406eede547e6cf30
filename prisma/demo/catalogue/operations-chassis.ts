import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { hold, measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Everything that is not the boosted engine. Torques are the maker's own figures, held here as data. */
export const chassisOperations: readonly Operation[] = [
  onHoist({
    id: "fit-ute-intercooler",
    name: "Fit intercooler",
    ownHours: 2.8,
    access: ["front-end"],
    steps: [
      tick("hoses", "Hoses dry, clamps behind their beads."),
      torque("core", "Core bolts.", 10, 1),
      measure("leak", "Boost leak test: loss over a minute at 150 kPa.", "kPa", 0, 5),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-exhaust-probe",
    name: "Fit exhaust temperature probe",
    ownHours: 0.9,
    access: [],
    skill: "electrical",
    steps: [
      serial("probe", "Probe serial number."),
      torque("boss", "Probe in its boss.", 45, 4),
      tick("display", "Display readable from the driver's seat, not over an airbag.", {
        cautions: [caution.airbag],
      }),
    ],
  }),
  onHoist({
    id: "fit-alternator",
    name: "Fit alternator",
    ownHours: 1.2,
    access: ["belt-drive"],
    skill: "electrical",
    steps: [
      tick("isolate", "Battery isolated.", { cautions: [caution.battery] }),
      torque("mounts", "Mounting bolts.", 48, 4),
      measure("charge", "Charging voltage at hot idle, all loads on.", "V", 13.4, 14.8),
    ],
  }),
  onHoist({
    id: "fit-cat-back",
    name: "Fit cat-back exhaust",
    ownHours: 1.8,
    access: ["undertray"],
    steps: [
      torque("flange", "Flange nuts.", 42, 4, { cautions: [caution.hoist] }),
      tick("clear", "15 mm clear of body, spare and brake lines, cold and hot."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-headers",
    name: "Fit headers",
    ownHours: 7.5,
    access: ["undertray"],
    steps: [
      torque("header", "Header bolts, centre outwards.", 24, 2, {
        cautions: [caution.hoist],
        oneUsePart: "header gaskets",
      }),
      tick("catalyst", "Catalysts in their place, sensors in theirs.", { cautions: [caution.emissions] }),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-gearbox-cooler",
    name: "Fit gearbox cooler",
    ownHours: 1.6,
    access: ["front-end"],
    steps: [
      torque("lines", "Line fittings.", 22, 2),
      measure("level", "Gearbox oil at level temperature.", "°C", 38, 45),
      tick("dry", "Dry after ten minutes hot."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-clutch",
    name: "Fit clutch and flywheel",
    ownHours: 6.8,
    access: ["undertray"],
    steps: [
      serial("clutch", "Clutch serial number.", { cautions: [caution.hoist] }),
      torque("flywheel", "New flywheel bolts, first stage.", 60, 3, {
        oneUsePart: "flywheel bolts",
        cautions: [caution.oneUse],
      }),
      measure("flywheel-angle", "Flywheel bolts turned further.", "°", 88, 92, { target: 90 }),
      hold("flywheel-witness", "Second person has watched every bolt turned to its angle."),
      torque("cover", "Cover bolts, crosswise.", 25, 2),
    ],
  }),
  onHoist({
    id: "fit-final-drive",
    name: "Fit final drives",
    ownHours: 9.5,
    access: ["wheels"],
    steps: [
      measure("backlash-front", "Front backlash.", "mm", 0.12, 0.2, { cautions: [caution.hoist] }),
      measure("backlash-rear", "Rear backlash.", "mm", 0.12, 0.2),
      hold("pattern", "Second person reads the contact pattern of both axles."),
    ],
  }),
  onHoist({
    id: "fit-five-tyres",
    name: "Fit and balance five tyres",
    ownHours: 1.9,
    access: ["wheels"],
    place: "floor",
    steps: [
      tick("sensors", "Pressure sensors moved over and learnt."),
      measure("pressure", "Cold pressure, all five, lowest.", "kPa", 240, 300),
      measure("nuts", "Wheel nuts checked again on the ground.", "N·m", 133, 147, { target: 140 }),
    ],
  }),
  onHoist({
    id: "fit-spare-carrier",
    name: "Fit spare carrier",
    ownHours: 1.1,
    access: [],
    steps: [
      torque("carrier", "Carrier bolts.", 85, 5),
      tick("plate", "Number plate and lamps visible."),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-lift",
    name: "Fit lift",
    ownHours: 5,
    access: ["wheels"],
    steps: [
      tick("compress", "Springs compressed in the cage, nobody in line.", { cautions: [caution.hoist] }),
      torque("top-mounts", "Top mount nuts.", 45, 3),
      torque("lower", "Lower arm bolts, at ride height, wheels loaded.", 165, 8),
      measure("brake-lines", "Slack in brake lines at full droop.", "mm", 15, 80),
      measure("height-spread", "Ride height, left to right difference.", "mm", 0, 8),
      hold("suspension", "Second person checks every suspension fastener is marked."),
    ],
  }),
  onHoist({
    id: "fit-front-springs",
    name: "Fit front springs",
    ownHours: 2.6,
    access: ["wheels"],
    steps: [
      tick("compress", "Springs compressed in the cage, nobody in line.", { cautions: [caution.hoist] }),
      torque("top-mounts", "Top mount nuts.", 45, 3),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-gvm-kit",
    name: "Fit gross-mass upgrade",
    ownHours: 4.2,
    access: ["wheels"],
    steps: [
      torque("rear-dampers", "Rear damper bolts.", 98, 5, { cautions: [caution.hoist] }),
      serial("plate", "Gross-mass plate number."),
      fitted,
    ],
  }),
  onHoist({
    id: "recalibrate-speedometer",
    name: "Recalibrate speedometer",
    ownHours: 0.6,
    access: ["battery-support"],
    order: 100,
    skill: "calibration",
    place: "floor",
    steps: [
      measure("true", "True speed by satellite when 100 km/h is shown.", "km/h", 87.3, 100, {
        cautions: [caution.roadTest],
      }),
    ],
  }),
  onHoist({
    id: "align-wheels",
    name: "Align wheels",
    ownHours: 1.2,
    access: [],
    order: 102,
    steps: [
      measure("toe", "Total toe, front.", "mm", -1, 2),
      measure("caster-spread", "Caster, left to right difference.", "°", 0, 0.5),
      torque("locks", "Tie-rod lock nuts.", 70, 5),
    ],
  }),
  onHoist({
    id: "recalibrate-camera",
    name: "Recalibrate camera and radar",
    ownHours: 1.5,
    access: [],
    order: 104,
    skill: "electrical",
    place: "bought-in",
    steps: [
      tick("after", "Alignment done, tank and load as the maker states, bay level."),
      serial("report", "Report number; no code stored."),
    ],
  }),
  onHoist({
    id: "aim-headlamps",
    name: "Aim headlamps",
    ownHours: 0.3,
    access: [],
    order: 106,
    place: "floor",
    steps: [measure("dip", "Dip at 10 m, lower lamp.", "mm", 80, 130)],
  }),
  onHoist({
    id: "fit-brake-controller",
    name: "Fit brake controller",
    ownHours: 2,
    access: ["dash-trim"],
    skill: "electrical",
    steps: [
      serial("controller", "Controller serial number.", { cautions: [caution.battery, caution.airbag] }),
      measure("drop", "Voltage drop at the socket, full braking.", "V", 0, 0.8),
      tick("try", "Tried on the test trailer: gain set, manual lever works.", {
        cautions: [caution.trailerBrakes],
      }),
    ],
  }),
  onHoist({
    id: "fit-trailer-socket",
    name: "Fit trailer socket",
    ownHours: 0.8,
    access: [],
    skill: "electrical",
    steps: [
      tick("pins", "Every pin tried with the tester under load.", { cautions: [caution.battery] }),
      fitted,
    ],
  }),
  {
    id: "re-torque",
    name: "Re-torque at 500 to 1,000 km",
    ownHours: 0.9,
    rate: "workshop",
    access: ["undertray-retorque"],
    stage: "after",
    order: 200,
    skill: "mechanical",
    place: "hoist",
    steps: [
      tick("look", "Cold engine: look for weeping joints before anything is wiped.", {
        cautions: [caution.hoist],
      }),
      torque("manifold", "Manifold bolts, centre outwards.", 25, 2),
      torque("cooler", "Heat exchanger bolts.", 10, 1),
      torque("wheel-nuts", "Wheel nuts, in a star.", 140, 7),
      tick("codes", "No code stored, trims as at the road test."),
    ],
  },
];
