import { boosted, everyModel, item, ridgewolds, towing } from "./item";
import type { CatalogueItem } from "./types";

/* Appearance and protection, checks that are sold by name, fees. Cost and sell: common practice, no source. */
const body: readonly CatalogueItem[] = [
  item("appearance", "part", "low-mount-winch", "OS-WNL", "Ostrel", "Winch, low mount behind the bar", {
    cost: 1_090,
    sell: 1_590,
    leadDays: 8,
    massKg: 40,
    operations: ["fit-winch"],
    note: "Covers about 6 % of the cooler stack.",
  }),
  item("appearance", "part", "light-bar", "SD-LBAR", "workshop", "Light bar, slim", {
    cost: 260,
    sell: 430,
    leadDays: 4,
    massKg: 4,
    fits: [...towing, "bramlet-trail-20"],
    operations: ["fit-driving-lamps"],
  }),
  item("appearance", "kit", "side-steps", "OS-STEP", "Ostrel", "Side steps with brush rails", {
    cost: 640,
    sell: 940,
    leadDays: 10,
    massKg: 38,
    fits: towing,
    operations: ["fit-side-steps"],
  }),
  item("appearance", "part", "roof-rack", "OS-RACK", "Ostrel", "Roof rack, flat", {
    cost: 780,
    sell: 1_140,
    leadDays: 8,
    massKg: 28,
    fits: [...ridgewolds, "bramlet-trail-20"],
    operations: ["fit-roof-rack"],
    note: "Its load counts against the roof's limit, the rack's and the payload.",
  }),
  item("appearance", "kit", "underbody-plates", "OS-UBP", "Ostrel", "Underbody protection plates", {
    cost: 460,
    sell: 690,
    leadDays: 7,
    massKg: 24,
    fits: [...towing, "bramlet-trail-20"],
    operations: ["fit-underbody-plates"],
  }),
  item("appearance", "bought-in", "paint-film", "SD-PPF", "workshop", "Paint protection film, front", {
    cost: 980,
    sell: 1_120,
    leadDays: 5,
    returnable: false,
    fits: everyModel,
    operations: ["fit-paint-film"],
  }),
  item("appearance", "kit", "boot-lip-gt44", "SD-LIP", "workshop", "Boot lip, painted", {
    cost: 310,
    sell: 490,
    leadDays: 12,
    massKg: 2,
    fits: ["orrismere-gt44"],
    operations: ["fit-boot-lip"],
  }),
  item("wheels-tyres", "duty", "track-days", "SD-TRK", "workshop", "Driven on track days", {
    cost: 0,
    sell: 0,
    fits: ["orrismere-gt44"],
  }),
];

const checks: readonly CatalogueItem[] = [
  item("operations", "operation", "dyno-power-runs", "SD-RUN", "workshop", "Three power runs on the dyno", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["measure-power-runs"],
  }),
  item("operations", "operation", "second-dyno-visit", "SD-DYN2", "workshop", "Second calibration visit", {
    cost: 0,
    sell: 0,
    fits: [...boosted, "vale-30td"],
    operations: ["calibrate-again"],
    note: "About one boosted build in three comes back once.",
  }),
  item(
    "operations",
    "operation",
    "road-test-and-pack",
    "SD-RTP",
    "workshop",
    "Road test, check-out and hand-over pack",
    {
      cost: 0,
      sell: 0,
      fits: ["vale-30td", "bramlet-trail-20"],
      operations: ["road-test", "check-out", "hand-over-pack"],
    },
  ),
  item("operations", "operation", "smoke-test", "SD-SMK", "workshop", "Intake smoke test", {
    cost: 8,
    sell: 20,
    fits: everyModel,
    operations: ["smoke-test-intake"],
  }),
  item("operations", "operation", "cooling-test", "SD-CPT", "workshop", "Cooling system pressure test", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["test-cooling"],
  }),
  item("operations", "operation", "noise-test", "SD-NSE", "workshop", "Stationary noise test", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["measure-noise"],
  }),
  item("operations", "operation", "brake-test", "SD-BRT", "workshop", "Brake test, bedding-in and balance", {
    cost: 0,
    sell: 0,
    fits: everyModel,
    operations: ["test-brakes"],
  }),
  item(
    "operations",
    "operation",
    "wheel-nut-visit",
    "SD-WNV",
    "workshop",
    "Wheel nuts checked after 50 to 100 km",
    {
      cost: 0,
      sell: 0,
      fits: everyModel,
      operations: ["check-wheel-nuts"],
    },
  ),
  item(
    "operations",
    "bought-in",
    "weighbridge",
    "SD-WGH",
    "workshop",
    "Weighed axle by axle, as it travels",
    {
      cost: 60,
      sell: 85,
      leadDays: 2,
      fits: everyModel,
      operations: ["weigh-vehicle"],
    },
  ),
  item(
    "operations",
    "bought-in",
    "lane-change-test",
    "SD-LCT",
    "workshop",
    "Lane-change test by the signatory",
    {
      cost: 620,
      sell: 720,
      leadDays: 15,
      returnable: false,
      fits: ridgewolds,
      operations: ["drive-lane-change"],
      note: "On closed ground only.",
    },
  ),
];

const fees: readonly CatalogueItem[] = [
  item(
    "fees",
    "fee",
    "requirements-application",
    "SD-SOR",
    "workshop",
    "Application for a statement of requirements",
    {
      cost: 65,
      sell: 95,
      leadDays: 10,
      returnable: false,
      fits: everyModel,
      note: "Sent before the work starts; the authority's own fee may change.",
    },
  ),
  item("fees", "fee", "mass-plate", "SD-MPL", "workshop", "Gross-mass plate and its record", {
    cost: 45,
    sell: 80,
    leadDays: 4,
    returnable: false,
    fits: towing,
  }),
  item("fees", "fee", "tyre-disposal", "SD-TDF", "workshop", "Old tyres taken away", {
    cost: 25,
    sell: 40,
    fits: everyModel,
    returnable: false,
  }),
  item("fees", "fee", "loan-car", "SD-LOAN", "workshop", "Loan car, five days", {
    cost: 140,
    sell: 220,
    fits: everyModel,
    returnable: false,
  }),
  item("fees", "fee", "crate-freight", "SD-CRT", "workshop", "Freight of a crate", {
    cost: 190,
    sell: 230,
    fits: everyModel,
    returnable: false,
  }),
];

export const bodyCheckItems: readonly CatalogueItem[] = [...body, ...checks, ...fees];
