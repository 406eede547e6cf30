import { boosted, everyModel, item } from "./item";
import type { CatalogueItem } from "./types";

/* Work that is chosen by name, and fees. An operation's price is its hours; the figures here are what comes on top. */

const operations: readonly CatalogueItem[] = [
  item(
    "operations",
    "operation",
    "pre-build-inspection",
    "SD-INSP",
    "workshop",
    "Pre-build inspection with baseline",
    {
      cost: 0,
      sell: 0,
      fits: everyModel,
      operations: ["inspect-vehicle", "measure-baseline"],
      note: "Paid, credited to the build. Valid 60 days or 3,000 km.",
    },
  ),
  item("operations", "operation", "follower-check", "SD-FOL", "workshop", "Pump follower check", {
    cost: 0,
    sell: 0,
    operations: ["check-follower"],
  }),
  item("operations", "operation", "oil-service", "SD-OIL", "workshop", "Engine oil and filter", {
    cost: 85,
    sell: 145,
    leadDays: 1,
    fits: boosted,
    operations: ["change-oil"],
  }),
  item(
    "operations",
    "operation",
    "dyno-tuning-boost",
    "SD-DYN-B",
    "workshop",
    "Dyno calibration and proof, boosted V8",
    {
      cost: 0,
      sell: 0,
      fits: boosted,
      operations: ["calibrate-boost", "measure-proof"],
    },
  ),
  item(
    "operations",
    "operation",
    "dyno-tuning-diesel",
    "SD-DYN-D",
    "workshop",
    "Dyno calibration and proof, diesel",
    {
      cost: 0,
      sell: 0,
      fits: ["vale-30td"],
      operations: ["calibrate-diesel", "measure-proof"],
    },
  ),
  item(
    "operations",
    "operation",
    "commissioning",
    "SD-COM",
    "workshop",
    "First start, road test, check-out and hand-over pack",
    {
      cost: 0,
      sell: 0,
      fits: boosted,
      operations: ["first-start", "road-test", "check-out", "hand-over-pack"],
    },
  ),
  item(
    "operations",
    "operation",
    "retorque-visit",
    "SD-RTQ",
    "workshop",
    "Re-torque visit at 500 to 1,000 km",
    {
      cost: 0,
      sell: 0,
      fits: boosted,
      operations: ["re-torque"],
    },
  ),
];

const fees: readonly CatalogueItem[] = [
  item(
    "fees",
    "consumable",
    "fluids-and-freight",
    "SD-FLU",
    "workshop",
    "Coolant, sealants, waste and freight",
    {
      cost: 210,
      sell: 290,
      returnable: false,
      fits: boosted,
    },
  ),
  item("fees", "consumable", "dyno-fuel", "SD-FUEL", "workshop", "Dyno fuel, 25 L of 98", {
    cost: 55,
    sell: 70,
    returnable: false,
    fits: boosted,
  }),
  item("fees", "bought-in", "engineer-certificate", "SD-CERT", "workshop", "Engineering certificate", {
    cost: 820,
    sell: 950,
    leadDays: 10,
    returnable: false,
    fits: everyModel,
    note: "By a licensed signatory, who may want to see work before it is covered.",
  }),
];

export const operationItems: readonly CatalogueItem[] = [...operations, ...fees];
