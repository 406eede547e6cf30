import { caution } from "./caution";
import { fitted, onHoist } from "./operation";
import { hold, measure, serial, tick, torque } from "./step";
import type { Operation } from "./types";

/** Exhaust sections, gearbox, clutch and axles. Torques are the maker's own figures, held here as data. */
export const drivelineOperations: readonly Operation[] = [
  onHoist({
    id: "fit-rear-silencer",
    name: "Fit rear silencer",
    ownHours: 0.9,
    access: [],
    steps: [
      torque("clamp", "Band clamp.", 48, 4, { cautions: [caution.hoist, caution.exhaustHot] }),
      tick("outlet", "Outlet past the body, no leak felt with a gloved hand at idle."),
    ],
  }),
  onHoist({
    id: "fit-filter-back",
    name: "Fit exhaust behind the diesel filter",
    ownHours: 1.4,
    access: ["undertray"],
    steps: [
      tick("filter", "Diesel filter, its pressure lines and probes stay in place and plugged.", {
        cautions: [caution.emissions, caution.exhaustHot],
      }),
      torque("flange", "Flange nuts, new gasket.", 42, 4, { oneUsePart: "exhaust gasket" }),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-mid-section",
    name: "Fit exhaust mid-section",
    ownHours: 1.1,
    access: [],
    steps: [
      torque("flange", "Flange nuts, new gasket.", 38, 3, {
        oneUsePart: "exhaust gasket",
        cautions: [caution.hoist, caution.exhaustHot],
      }),
      tick("clear", "15 mm clear of body, tank and brake lines."),
    ],
  }),
  onHoist({
    id: "fit-heat-shields",
    name: "Fit heat shields",
    ownHours: 0.8,
    access: ["undertray"],
    steps: [tick("clear", "Shields between headers and loom, steering joint and brake lines."), fitted],
  }),
  onHoist({
    id: "service-gearbox-oil",
    name: "Gearbox oil, filter and pan",
    ownHours: 1.6,
    access: ["undertray"],
    steps: [
      torque("pan", "Pan bolts, crosswise.", 10, 1, {
        oneUsePart: "pan with filter",
        cautions: [caution.hoist],
      }),
      measure("level", "Level checked at an oil temperature of.", "°C", 38, 45),
    ],
  }),
  onHoist({
    id: "fit-torque-converter",
    name: "Fit torque converter",
    ownHours: 2.1,
    access: ["gearbox-out"],
    steps: [
      serial("converter", "Converter serial number."),
      measure("depth", "Converter pushed home, depth below the bell face.", "mm", 22, 26),
      torque("bolts", "New converter bolts.", 60, 3, {
        oneUsePart: "converter bolts",
        cautions: [caution.oneUse],
      }),
    ],
  }),
  onHoist({
    id: "rebuild-gearbox",
    name: "Gearbox rebuilt outside",
    ownHours: 0.8,
    access: ["gearbox-out"],
    place: "bought-in",
    steps: [
      serial("report", "Report number of the specialist, with clearances."),
      measure("adaptation", "Shift adaptation run: worst fill time off the mean.", "ms", 0, 40),
    ],
  }),
  onHoist({
    id: "fit-engine-mounts",
    name: "Fit engine mounts",
    ownHours: 2.4,
    access: ["undertray"],
    steps: [
      torque("mount", "Mount through-bolts, engine at rest on them.", 85, 5, { cautions: [caution.hoist] }),
      fitted,
    ],
  }),
  onHoist({
    id: "fit-small-clutch",
    name: "Fit clutch, small 4WD",
    ownHours: 5.2,
    access: [],
    steps: [
      measure("runout", "Flywheel face run-out.", "mm", 0, 0.1, {
        cautions: [caution.hoist, caution.gearboxWeight],
      }),
      torque("cover", "Cover bolts, crosswise.", 20, 2),
      tick("free", "Pedal free play set; drives off in first without a shudder."),
    ],
  }),
  onHoist({
    id: "fit-rear-main-seal",
    name: "Fit rear main seal",
    ownHours: 0.9,
    access: ["gearbox-out"],
    steps: [
      measure("depth", "Seal pressed in square, depth.", "mm", 0.3, 1, { oneUsePart: "rear main seal" }),
    ],
  }),
  onHoist({
    id: "fit-rear-differential",
    name: "Build the rear differential",
    ownHours: 5.6,
    access: ["wheels", "axle-drained"],
    steps: [
      serial("differential", "Serial number.", { cautions: [caution.hoist] }),
      measure("backlash", "Backlash, mean of four places.", "mm", 0.12, 0.2),
      torque("crown", "Crown wheel bolts.", 110, 6),
      tick("sleeve", "New crush sleeve and pinion nut; turning torque set.", {
        oneUsePart: "crush sleeve and pinion nut",
        cautions: [caution.oneUse],
      }),
      hold("pattern", "Second person reads the contact pattern."),
    ],
  }),
  onHoist({
    id: "change-axle-oil",
    name: "Change axle oil",
    ownHours: 0.3,
    access: ["axle-drained"],
    steps: [tick("level", "Filled to the plug, front and rear.", { cautions: [caution.hoist] })],
  }),
];
