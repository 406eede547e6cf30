import { fuels } from "@buildproof/engineering";
import { axleShare, type Component, component, type FigureField, number, overSpeed } from "./figure-field";

const optional = { isRequired: false };
const millimetres = [20, 400] as const;

const drive = (of: string): readonly FigureField[] => [
  number(`${of}.drive.crankPulleyMm`, "Crank pulley", "mm", millimetres),
  number(`${of}.drive.blowerPulleyMm`, "Blower pulley", "mm", millimetres),
  number(`${of}.drive.internalRatio`, "Ratio of its own gears", "", [0.2, 20]),
  number(`${of}.drive.maxBeltSpeedMPerS`, "Fastest belt", "m/s", [10, 150], optional),
  number(`${of}.maxSpeedRpm`, "Fastest rotor", "rpm", [1_000, 250_000]),
  overSpeed(`${of}.adiabaticEfficiency`, "Adiabatic efficiency", "", [0.2, 0.95]),
];

const injectors = (of: string): readonly FigureField[] => [
  number(`${of}.count`, "Injectors", "", [1, 24]),
  number(`${of}.ratedPressureKPa`, "Rated at", "kPa", [50, 300_000]),
  number(`${of}.railKPa`, "Rail pressure", "kPa", [50, 300_000]),
];

const belongsTo = (path: string, label: string, help: string, example: string): FigureField => ({
  kind: "text",
  path,
  label,
  unit: "",
  isRequired: false,
  help,
  like: /^[a-z0-9][a-z0-9-]*$/,
  example,
});

/** What changes air, fuel, ignition, calibration and exhaust. */
export const engineComponents: readonly Component[] = [
  component(
    "blower",
    "Blower, displacement",
    [
      number("blower.displacementLPerRev", "Displacement", "L/rev", [0.1, 10]),
      ...drive("blower"),
      overSpeed("blower.volumetricEfficiency", "Volumetric efficiency", "", [0.2, 1.2]),
      number("blower.leakageAreaMm2", "Leakage area", "mm²", [0, 500], optional),
      belongsTo(
        "blower.needs",
        "A pulley for the blower with the code",
        "Empty: a blower of its own.",
        "blower-24",
      ),
      axleShare,
    ],
    { "blower.kind": "displacement" },
  ),
  component(
    "centrifugal-blower",
    "Blower, centrifugal",
    [
      number("blower.designSpeedRpm", "Speed of the design point", "rpm", [1_000, 250_000]),
      number("blower.designPressureRatio", "Pressure ratio of the design point", "", [1.01, 5]),
      ...drive("blower"),
      axleShare,
    ],
    { "blower.kind": "centrifugal" },
  ),
  component("belt-drive", "Pulley, belt or crank drive", [axleShare]),
  component("cooling", "Radiator, oil cooler or coolant", [axleShare]),
  component("intake", "Filter, intake or crankcase", [axleShare]),
  component("cooler", "Charge cooler", [
    number("chargeCooler.effectiveness", "Effectiveness", "", [0, 1]),
    number("chargeCooler.coolantOverAmbientC", "Coolant over ambient", "°C", [0, 80]),
    number("chargeCooler.pressureDropKPa", "Pressure drop", "kPa", [0, 50]),
    belongsTo(
      "chargeCooler.needs",
      "Improves the cooler with the code",
      "Empty: it cools by itself.",
      "charge-cooler",
    ),
    axleShare,
  ]),
  component("intercooler", "Intercooler of a turbo-diesel", [
    number("assume.dieselChargeC", "Charge at full load", "°C", [0, 150]),
    number("assume.dieselExhaustC", "Exhaust at full load", "°C", [300, 900]),
    axleShare,
  ]),
  component(
    "high-pressure-pump",
    "High-pressure fuel pump",
    [
      number("fuelStages.0.displacementCm3PerCamRev", "Delivers per turn of the cam", "cm³", [0.05, 20]),
      number("fuelStages.0.camRatio", "Turns of the cam per turn of the engine", "", [0.1, 3], optional),
      overSpeed("fuelStages.0.volumetricEfficiency", "Volumetric efficiency", "", [0.2, 1.1]),
      number("fuelStages.0.railPressure.railKPa", "Rail pressure", "kPa", [1_000, 300_000], optional),
      number("fuelStages.0.railPressure.ratedKPa", "Rated at", "kPa", [1_000, 300_000], optional),
      number("fuelStages.0.railPressure.lossPctPer10MPa", "Loss per 10 MPa", "%", [0, 50], optional),
      axleShare,
    ],
    { "fuelStages.0.kind": "high-pressure-pump" },
  ),
  component(
    "tank-pump",
    "Tank pump",
    [
      {
        kind: "curve",
        path: "fuelStages.0.points",
        label: "Flow at pressure",
        unit: "L/h",
        isRequired: true,
        help: "Pairs of pressure in kPa and flow in L/h: 300: 450, 500: 385.",
        over: "pressureKPa",
        value: "flowLPerH",
        mayBeOne: false,
        low: 0,
        high: 3_000,
      },
      number("fuelStages.0.systemPressureKPa", "Pressure of the system", "kPa", [50, 2_000]),
      axleShare,
    ],
    { "fuelStages.0.kind": "tank-pump" },
  ),
  component(
    "port-injectors",
    "Port injectors",
    [
      ...injectors("fuelStages.0"),
      number("fuelStages.0.staticFlowCm3PerMin", "Static flow of one", "cm³/min", [10, 5_000]),
      number("fuelStages.0.manifoldKPa", "Manifold over ambient", "kPa", [-100, 400]),
      number("fuelStages.0.dutyLimit", "Open at most this share of the time", "", [0.1, 1]),
      axleShare,
    ],
    { "fuelStages.0.kind": "port-injectors" },
  ),
  component(
    "direct-injectors",
    "Direct injectors",
    [
      ...injectors("fuelStages.0"),
      number("fuelStages.0.staticFlowGPerS", "Static flow of one", "g/s", [0.5, 200]),
      number("fuelStages.0.cylinderKPa", "Pressure in the cylinder", "kPa", [0, 20_000]),
      number("fuelStages.0.windowDeg", "Window of the crank", "°", [10, 720]),
      number("fuelStages.0.deadTimeMs", "Dead time", "ms", [0, 5]),
      axleShare,
    ],
    { "fuelStages.0.kind": "direct-injectors" },
  ),
  component("fuel-line", "Fuel line, seal or sensor", [axleShare]),
  component("fuel", "Fuel it runs on", [
    {
      kind: "choice",
      path: "burns.fuel",
      label: "Fuel",
      unit: "",
      isRequired: true,
      help: "",
      choices: fuels.map((fuel) => ({ code: fuel, name: fuel })),
    },
    number("burns.octaneNumber", "Octane number", "RON", [80, 120], optional),
  ]),
  component("octane-map", "Map for another octane", [
    number("burns.octaneNumber", "Octane number", "RON", [80, 120]),
  ]),
  component("calibration", "Calibration", [
    number("breathing.retardDeg", "Spark behind best torque, without a blower", "°", [0, 25], optional),
    number("breathing.lambda", "Lambda, without a blower", "", [0.6, 1.1], optional),
  ]),
  component("diesel-calibration", "Calibration of a turbo-diesel", [
    overSpeed("calibration.torqueRequestNm", "Torque asked for", "N·m", [0, 3_000]),
    number("calibration.smokeLambda", "Least lambda", "", [1, 3]),
    number("calibration.exhaustLimitC", "Hottest exhaust", "°C", [400, 1_000]),
  ]),
  component("plugs", "Spark plugs"),
  component("electrical", "Electrical or measuring", [axleShare]),
  component("exhaust", "Exhaust section", [
    number("assume.backPressureKPaAt6000", "Back pressure at 6,000 rpm, boosted", "kPa", [0, 100], optional),
    number("breathing.backPressureKPaAt6000", "The same without a blower", "kPa", [0, 100], optional),
    number(
      "breathing.fillingGain",
      "Air over the standard exhaust’s, without a blower",
      "",
      [0.5, 1.3],
      optional,
    ),
    axleShare,
  ]),
];
