import { axleShare, type Component, component, type FigureField, number } from "./figure-field";

const optional = { isRequired: false };
const gearboxCap = "The gearbox calibration";

const designation: FigureField = {
  kind: "text",
  path: "tyre.designation",
  label: "Size as on the side wall",
  unit: "",
  isRequired: true,
  help: "With load index and speed symbol: 285/65R18 116T.",
  like: /^\S.{3,40}$/,
  example: "285/65R18 116T",
};
/** By the fact of the vehicle that says what those parts weigh. */
const replaces: FigureField = {
  kind: "choice",
  path: "masses.replacesFact",
  label: "What comes off for it",
  unit: "",
  isRequired: false,
  help: "Only the difference in mass counts then. Empty: nothing comes off.",
  choices: [
    { code: "tyreSetKg", name: "the tyres on it" },
    { code: "liftKg", name: "the lift on it" },
  ],
};
const placard = number("tyre.placardKmh", "Placard holds the driver to", "km/h", [60, 300], optional);
const speedometer = number("tyre.speedometerOverPct", "Shows over the true speed", "%", [-10, 20], optional);

/** What changes driveline, wheels, towing, appearance, and the work itself. */
export const chassisComponents: readonly Component[] = [
  component(
    "gearbox-calibration",
    "Gearbox calibration",
    [
      number("caps.0.torqueNm", "Holds torque at the crank to", "N·m", [50, 5_000]),
      number("caps.1.torqueNm", "Holds it in low gears to", "N·m", [50, 5_000], optional),
      {
        kind: "list",
        path: "caps.1.gears",
        label: "Low gears",
        unit: "",
        isRequired: false,
        help: "1, 2, 3",
        low: 1,
        high: 12,
      },
    ],
    {
      "caps.0.id": "gearbox",
      "caps.0.name": gearboxCap,
      "caps.1.id": "gearbox-low",
      "caps.1.name": gearboxCap,
    },
  ),
  component("gearbox-work", "Gearbox part or work", [axleShare]),
  component("clutch", "Clutch or flywheel", [axleShare]),
  component("final-drive", "Final drive", [number("driveline.finalDrive", "Ratio", "", [1, 10]), axleShare]),
  component("axle", "Differential, axle part or oil", [axleShare]),
  component("tyre", "Tyres", [designation, placard, speedometer, replaces, axleShare]),
  component("wheel", "Wheel or spare carrier", [axleShare]),
  component("speedometer", "Speedometer", [{ ...speedometer, isRequired: true }]),
  component("placard", "Placard", [{ ...placard, isRequired: true }]),
  component("suspension", "Suspension", [
    number("masses.gvmAddKg", "Gross mass, more by", "kg", [0, 3_000], optional),
    number("masses.frontRatingAddKg", "Front axle carries more by", "kg", [0, 2_000], optional),
    number("masses.rearRatingAddKg", "Rear axle carries more by", "kg", [0, 2_000], optional),
    replaces,
    axleShare,
  ]),
  component("brake", "Brakes", [axleShare]),
  component("tow", "Trailer it tows", [
    number("masses.trailerKg", "Loaded trailer", "kg", [50, 10_000]),
    number("masses.ballKg", "On the ball", "kg", [0, 1_000]),
  ]),
  component("tow-equipment", "Tow equipment", [axleShare]),
  component("brake-controller", "Trailer brake controller", [axleShare]),
  component("appearance", "Appearance or protection", [axleShare]),
  component("duty", "What it is used for", [axleShare]),
  component("operation", "Work of the workshop"),
  component("fee", "Fee or consumable"),
];
