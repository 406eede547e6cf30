import { everyModel, item, ridgewolds } from "./item";
import type { CatalogueItem } from "./types";

/* Driveline, wheels and tyres, towing, appearance. Cost and sell: common practice, no source. */
const driveline: readonly CatalogueItem[] = [
  item(
    "driveline",
    "calibration",
    "gearbox-calibration",
    "EV-7SP",
    "Ellverin",
    "7-speed gearbox calibration",
    {
      cost: 180,
      sell: 690,
      returnable: false,
      operations: ["flash-gearbox-controller"],
      note: "Holds engine torque to 680 N·m in gears 1 to 3.",
    },
  ),
  item("driveline", "kit", "gearbox-cooler", "QN-GC", "Quoinard", "Gearbox oil cooler", {
    cost: 480,
    sell: 760,
    leadDays: 6,
    massKg: 7,
    fits: [...ridgewolds, "vale-30td"],
    operations: ["fit-gearbox-cooler"],
  }),
  item(
    "driveline",
    "part",
    "clutch-800",
    "SD-CL8",
    "workshop",
    "Clutch, 800 N·m static, with solid flywheel",
    {
      cost: 1_420,
      sell: 2_050,
      leadDays: 12,
      massKg: 6,
      serialised: true,
      fits: ["orrismere-gt44"],
      operations: ["fit-clutch"],
    },
  ),
  item("driveline", "part", "dual-mass-flywheel", "SD-DMF", "workshop", "Dual-mass flywheel, as standard", {
    cost: 980,
    sell: 1_340,
    leadDays: 10,
    fits: ["orrismere-gt44"],
  }),
  item("driveline", "kit", "flywheel-bolts", "SD-FB", "workshop", "Flywheel bolts", {
    cost: 45,
    sell: 90,
    leadDays: 3,
    returnable: false,
    oneUse: true,
    fits: ["orrismere-gt44"],
  }),
  item(
    "driveline",
    "part",
    "lower-final-drive",
    "SD-FD",
    "workshop",
    "Lower final-drive gear set, front and rear",
    {
      cost: 1_180,
      sell: 1_690,
      leadDays: 20,
      fits: ["bramlet-trail-20"],
      operations: ["fit-final-drive"],
    },
  ),
];

const wheels: readonly CatalogueItem[] = [
  item("wheels-tyres", "kit", "tyres-33", "OS-33", "Ostrel", "33x12.50R18 tyres, set of 5", {
    cost: 2_650,
    sell: 3_150,
    leadDays: 5,
    massKg: 150,
    operations: ["fit-five-tyres"],
  }),
  item("wheels-tyres", "kit", "tyres-tall-small-4wd", "OS-235", "Ostrel", "235/75R15 tyres, set of 5", {
    cost: 980,
    sell: 1_180,
    leadDays: 4,
    massKg: 70,
    fits: ["bramlet-trail-20"],
    operations: ["fit-five-tyres"],
    note: "30 mm taller than standard, about 4 %.",
  }),
  item("wheels-tyres", "part", "spare-carrier", "OS-SC", "Ostrel", "Spare-wheel carrier for 33-inch tyres", {
    cost: 420,
    sell: 640,
    leadDays: 7,
    massKg: 14,
    operations: ["fit-spare-carrier"],
  }),
  item("wheels-tyres", "kit", "lift-50", "OS-L50", "Ostrel", "50 mm lift", {
    cost: 1_900,
    sell: 2_700,
    leadDays: 9,
    massKg: 18,
    operations: ["fit-lift"],
  }),
  item("wheels-tyres", "part", "front-springs", "OS-FS60", "Ostrel", "Front springs, 60 kg more", {
    cost: 310,
    sell: 480,
    leadDays: 5,
    massKg: 4,
    operations: ["fit-front-springs"],
  }),
  item("wheels-tyres", "kit", "gvm-kit", "OS-GVM", "Ostrel", "Gross-mass upgrade, 250 kg", {
    cost: 1_950,
    sell: 2_850,
    leadDays: 15,
    massKg: 0,
    operations: ["fit-gvm-kit"],
  }),
  item(
    "wheels-tyres",
    "operation",
    "speedometer-recalibration",
    "SD-SPD",
    "workshop",
    "Speedometer recalibration and check",
    {
      cost: 0,
      sell: 0,
      fits: everyModel,
      operations: ["recalibrate-speedometer"],
    },
  ),
  item("wheels-tyres", "operation", "wheel-alignment", "SD-ALN", "workshop", "Wheel alignment", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["align-wheels"],
  }),
  item(
    "wheels-tyres",
    "bought-in",
    "camera-recalibration",
    "SD-CAM",
    "workshop",
    "Camera and radar recalibration",
    {
      cost: 380,
      sell: 440,
      leadDays: 3,
      fits: [...ridgewolds, "vale-30td", "orrismere-gt44"],
      operations: ["recalibrate-camera"],
    },
  ),
  item("wheels-tyres", "operation", "headlamp-aim", "SD-AIM", "workshop", "Headlamp aim", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["aim-headlamps"],
  }),
  item("wheels-tyres", "fee", "tyre-placard", "SD-PLC", "workshop", "Tyre placard and 140 km/h symbol", {
    cost: 12,
    sell: 45,
    leadDays: 2,
  }),
];

const towing: readonly CatalogueItem[] = [
  item("towing", "duty", "tow-3000", "SD-T30", "workshop", "Tows up to 3,000 kg, 300 kg on the ball", {
    cost: 0,
    sell: 0,
    massKg: 300,
    fits: [...ridgewolds, "vale-30td"],
  }),
  item("towing", "duty", "tow-2000", "SD-T20", "workshop", "Tows up to 2,000 kg, 200 kg on the ball", {
    cost: 0,
    sell: 0,
    massKg: 200,
    fits: [...ridgewolds, "vale-30td"],
  }),
  item("towing", "part", "brake-controller", "MW-BC", "Marlowick", "Trailer brake controller", {
    cost: 290,
    sell: 480,
    leadDays: 3,
    massKg: 1,
    serialised: true,
    fits: [...ridgewolds, "vale-30td"],
    operations: ["fit-brake-controller"],
  }),
  item("towing", "part", "twelve-pin-socket", "MW-12", "Marlowick", "12-pin trailer socket", {
    cost: 95,
    sell: 180,
    leadDays: 2,
    massKg: 1,
    fits: [...ridgewolds, "vale-30td"],
    operations: ["fit-trailer-socket"],
  }),
];

const appearance: readonly CatalogueItem[] = [
  item("appearance", "kit", "dark-trim", "SD-DARK", "workshop", "Dark trim: grille, badges, mirror caps", {
    cost: 560,
    sell: 890,
    leadDays: 6,
    fits: [...ridgewolds, "vale-30td"],
    operations: ["fit-dark-trim"],
  }),
  item("appearance", "part", "driving-lamps", "SD-LMP", "workshop", "Driving lamps, slim pair", {
    cost: 340,
    sell: 560,
    leadDays: 4,
    massKg: 5,
    fits: everyModel,
    operations: ["fit-driving-lamps"],
  }),
  item("appearance", "part", "front-bar", "OS-BAR", "Ostrel", "Front protection bar", {
    cost: 1_350,
    sell: 1_980,
    leadDays: 14,
    massKg: 62,
    operations: ["fit-front-bar"],
    note: "Only a bar that the maker lists for the airbag sensors of this model.",
  }),
  item("appearance", "part", "high-mount-winch", "OS-WN", "Ostrel", "Winch, high mount", {
    cost: 980,
    sell: 1_450,
    leadDays: 8,
    massKg: 42,
    operations: ["fit-winch"],
    note: "Covers about 18 % of the cooler stack.",
  }),
];

export const chassisItems: readonly CatalogueItem[] = [...driveline, ...wheels, ...towing, ...appearance];
