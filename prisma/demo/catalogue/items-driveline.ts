import { boosted, everyModel, item, towing } from "./item";
import type { CatalogueItem } from "./types";

/* Exhaust sections, clutch, gearbox, axles. Cost and sell: common practice, no source. */
const exhaust: readonly CatalogueItem[] = [
  item("exhaust", "part", "rear-silencer-57", "QN-RS57", "Quoinard", "Rear silencer, quiet", {
    cost: 390,
    sell: 610,
    leadDays: 8,
    massKg: 3,
    operations: ["fit-rear-silencer"],
    note: "The rear section alone; the middle stays as it is.",
  }),
  item("exhaust", "part", "filter-back-30td", "QN-FB3", "Quoinard", "Exhaust from the diesel filter back", {
    cost: 640,
    sell: 980,
    leadDays: 7,
    massKg: 2,
    fits: ["vale-30td"],
    operations: ["fit-filter-back"],
    note: "The filter and its sensors stay where they are.",
  }),
  item("exhaust", "part", "cat-back-gt44", "QN-CB44", "Quoinard", "Cat-back exhaust for the GT 4.4", {
    cost: 1_320,
    sell: 1_950,
    leadDays: 12,
    massKg: 1,
    fits: ["orrismere-gt44"],
    operations: ["fit-cat-back"],
  }),
  item("exhaust", "part", "mid-section-20", "QN-MS20", "Quoinard", "Exhaust mid-section for the Trail 2.0", {
    cost: 210,
    sell: 340,
    leadDays: 6,
    fits: ["bramlet-trail-20"],
    operations: ["fit-mid-section"],
    note: "Same bore as standard: it replaces what has rusted.",
  }),
  item("exhaust", "kit", "exhaust-gaskets", "QN-GSK", "Quoinard", "Exhaust gaskets, nuts and hangers", {
    cost: 32,
    sell: 68,
    leadDays: 3,
    returnable: false,
    oneUse: true,
    fits: everyModel,
  }),
  item("exhaust", "part", "heat-shields-gt44", "QN-HS44", "Quoinard", "Heat shields for the headers", {
    cost: 120,
    sell: 220,
    leadDays: 7,
    massKg: 2,
    fits: ["orrismere-gt44"],
    operations: ["fit-heat-shields"],
  }),
];

const gearbox: readonly CatalogueItem[] = [
  item("driveline", "kit", "gearbox-cooler-fan", "QN-GCF", "Quoinard", "Fan for the gearbox cooler", {
    cost: 190,
    sell: 310,
    leadDays: 5,
    massKg: 3,
    fits: towing,
    operations: ["fit-cooler-fan"],
  }),
  item("driveline", "operation", "gearbox-oil-service", "SD-ATF", "workshop", "Gearbox oil, filter and pan", {
    cost: 290,
    sell: 430,
    leadDays: 2,
    returnable: false,
    fits: towing,
    operations: ["service-gearbox-oil"],
    note: "Filter and pan are one piece and new.",
  }),
  item("driveline", "part", "torque-converter", "SD-TC", "workshop", "Torque converter, 850 N·m lock-up", {
    cost: 1_480,
    sell: 2_150,
    leadDays: 14,
    massKg: 2,
    serialised: true,
    operations: ["fit-torque-converter"],
  }),
  item("driveline", "kit", "converter-bolts", "SD-CVB", "workshop", "Flexplate and converter bolts", {
    cost: 38,
    sell: 76,
    leadDays: 3,
    returnable: false,
    oneUse: true,
  }),
  item(
    "driveline",
    "bought-in",
    "gearbox-clutch-packs",
    "SD-GCP",
    "workshop",
    "Gearbox clutch packs renewed",
    {
      cost: 3_400,
      sell: 3_950,
      leadDays: 12,
      returnable: false,
      operations: ["rebuild-gearbox"],
      note: "By a gearbox specialist, the box on the bench.",
    },
  ),
  item("driveline", "kit", "engine-mounts-57", "SD-EM", "workshop", "Engine mounts, firmer", {
    cost: 260,
    sell: 410,
    leadDays: 7,
    massKg: 1,
    operations: ["fit-engine-mounts"],
  }),
];

const clutch: readonly CatalogueItem[] = [
  item(
    "driveline",
    "part",
    "clutch-standard-gt44",
    "SD-CLS",
    "workshop",
    "Clutch as standard, 660 N·m static",
    {
      cost: 610,
      sell: 890,
      leadDays: 5,
      fits: ["orrismere-gt44"],
      operations: ["fit-clutch"],
      note: "For an engine without a blower; keeps the dual-mass flywheel.",
    },
  ),
  item("driveline", "part", "clutch-bramlet", "SD-CL2", "workshop", "Clutch for the Trail 2.0", {
    cost: 290,
    sell: 450,
    leadDays: 4,
    fits: ["bramlet-trail-20"],
    operations: ["fit-small-clutch"],
  }),
  item("driveline", "kit", "release-bearing", "SD-RB", "workshop", "Release bearing and spigot", {
    cost: 85,
    sell: 150,
    leadDays: 3,
    oneUse: true,
    fits: ["orrismere-gt44", "bramlet-trail-20"],
  }),
  item("driveline", "kit", "rear-main-seal", "SD-RMS", "workshop", "Rear main seal", {
    cost: 42,
    sell: 90,
    leadDays: 3,
    oneUse: true,
    returnable: false,
    fits: [...boosted, "bramlet-trail-20"],
    operations: ["fit-rear-main-seal"],
  }),
];

const axles: readonly CatalogueItem[] = [
  item("driveline", "part", "limited-slip-gt44", "SD-LSD", "workshop", "Limited-slip differential", {
    cost: 1_290,
    sell: 1_880,
    leadDays: 12,
    massKg: 2,
    serialised: true,
    fits: ["orrismere-gt44"],
    operations: ["fit-rear-differential"],
  }),
  item("driveline", "kit", "rear-locker", "OS-RL", "Ostrel", "Rear locking differential with switch", {
    cost: 1_080,
    sell: 1_620,
    leadDays: 10,
    massKg: 3,
    serialised: true,
    fits: [...towing, "bramlet-trail-20"],
    operations: ["fit-rear-differential"],
    note: "For loose ground at walking pace; unlocked on the road.",
  }),
  item("driveline", "kit", "axle-seals", "SD-AXS", "workshop", "Axle seals, crush sleeve and pinion nut", {
    cost: 48,
    sell: 95,
    leadDays: 3,
    returnable: false,
    oneUse: true,
    fits: everyModel,
  }),
  item("driveline", "consumable", "axle-oil", "SD-AXO", "workshop", "Axle oil, both axles", {
    cost: 62,
    sell: 120,
    leadDays: 1,
    returnable: false,
    fits: everyModel,
    operations: ["change-axle-oil"],
  }),
];

export const drivelineItems: readonly CatalogueItem[] = [...exhaust, ...gearbox, ...clutch, ...axles];
