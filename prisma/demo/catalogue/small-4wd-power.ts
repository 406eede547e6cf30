import { any, atLeast, has, hasAll } from "./condition";
import { item } from "./item";
import { needs } from "./rule";
import type { CatalogueItem, CatalogueRule, ModelId } from "./types";

/* What changes the power of the small 4WD, which stands no boost. Invented; the rules are common practice, no source. */
const small4wd: readonly ModelId[] = ["bramlet-trail-20"];

export const small4wdItems: readonly CatalogueItem[] = [
  item("exhaust", "part", "cat-back-20", "QN-CB20", "Quoinard", "Cat-back exhaust for the Trail 2.0", {
    cost: 560,
    sell: 840,
    leadDays: 8,
    massKg: 1,
    fits: small4wd,
    operations: ["fit-cat-back"],
    note: "6 kPa less back pressure at 6,000 rpm. By itself hardly to be felt: it pays with its calibration.",
  }),
  item(
    "ignition-calibration",
    "calibration",
    "calibration-20",
    "EV-T20",
    "Ellverin",
    "Calibration for the Trail 2.0, petrol 95",
    {
      cost: 0,
      sell: 520,
      returnable: false,
      fits: small4wd,
      operations: ["flash-engine-controller"],
      note: "Gives back the spark that the standard map holds for petrol 91.",
    },
  ),
  item("operations", "operation", "dyno-tuning-20", "SD-DYN-S", "workshop", "Dyno proof, Trail 2.0", {
    cost: 0,
    sell: 0,
    fits: small4wd,
    operations: ["measure-proof"],
  }),
];

export const small4wdRules: readonly CatalogueRule[] = [
  needs(
    "octane-for-calibration-20",
    small4wd,
    has("calibration-20"),
    atLeast("fuelOctaneRon", 95),
    "The calibration sets the spark for petrol 95: record that the owner really buys it, or the engine knocks.",
    { safety: true },
  ),
  needs(
    "proof-for-calibration-20",
    small4wd,
    has("calibration-20"),
    hasAll("controller-licence-credit", "dyno-tuning-20"),
    "A controller that is written takes a licence credit, and a few kilowatts are only known when they are measured.",
  ),
  needs(
    "inspect-before-calibration-20",
    small4wd,
    has("calibration-20"),
    any(has("pre-build-inspection"), atLeast("inspectionPassed", 1)),
    "A small gain is lost in a weak cylinder or a slipping clutch: they are looked for first, with the baseline.",
  ),
];
