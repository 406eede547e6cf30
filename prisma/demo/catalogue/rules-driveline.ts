import { all, any, atLeast, has, hasAll, hasAny, not } from "./condition";
import { boosted, everyModel, ridgewolds, towing } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Exhaust, emission equipment, gearbox, clutch and axles. Common practice, no source, unless it says otherwise. */
const vale = ["vale-30td"] as const;
const gt44 = ["orrismere-gt44"] as const;
const bramlet = ["bramlet-trail-20"] as const;

const emissions: readonly CatalogueRule[] = [
  excludes(
    "no-boost-without-catalysts",
    boosted,
    not(atLeast("catalystsFitted", 1)),
    has("boost-calibration"),
    "The catalysts must be fitted and working: we calibrate no road vehicle without them, whoever took them off.",
    { safety: true, source: source.emissions },
  ),
  excludes(
    "no-headers-without-catalysts",
    gt44,
    not(atLeast("catalystsFitted", 1)),
    has("headers-gt44"),
    "The headers bolt up to the standard catalysts, which stay; without them the vehicle may not be used on the road.",
    { safety: true, source: source.emissions },
  ),
  excludes(
    "no-exhaust-without-filter",
    vale,
    not(atLeast("dieselFilterFitted", 1)),
    has("filter-back-30td"),
    "The diesel filter is missing or hollow: we fit no exhaust behind it until it is back.",
    { safety: true, source: source.emissions },
  ),
  excludes(
    "no-rewrite-without-recirculation",
    vale,
    not(all(atLeast("dieselFilterFitted", 1), atLeast("exhaustRecirculationFitted", 1))),
    has("calibration-rewrite"),
    "Exhaust recirculation and filter must be fitted and working before a calibration is written again.",
    { safety: true, source: source.emissions },
  ),
];

const exhaust: readonly CatalogueRule[] = [
  needs(
    "gaskets-with-exhaust",
    everyModel,
    hasAny("rear-silencer-57", "filter-back-30td", "cat-back-gt44", "mid-section-20", "headers-gt44"),
    has("exhaust-gaskets"),
    "Exhaust gaskets and their nuts are crushed once: a used one blows, and exhaust in the cabin is poison.",
    { safety: true },
  ),
  needs(
    "noise-test-with-exhaust",
    ["vale-30td", "orrismere-gt44"],
    hasAny("filter-back-30td", "cat-back-gt44", "headers-gt44"),
    has("noise-test"),
    "A changed exhaust is measured against the model's stationary figure, so that it passes when somebody else measures it.",
    { source: source.noise },
  ),
  needs(
    "shields-with-headers",
    gt44,
    has("headers-gt44"),
    has("heat-shields-gt44"),
    "Headers run closer to loom, brake lines and steering joint than the cast manifolds did.",
    { safety: true },
  ),
];

const gearbox: readonly CatalogueRule[] = [
  needs(
    "oil-with-gearbox-out",
    ridgewolds,
    hasAny("torque-converter", "gearbox-clutch-packs"),
    has("gearbox-oil-service"),
    "Half the gearbox oil leaves with the converter; new clutches and old oil do not go together.",
  ),
  needs(
    "bolts-with-converter",
    ridgewolds,
    hasAny("torque-converter", "gearbox-clutch-packs", "rear-main-seal"),
    has("converter-bolts"),
    "Flexplate and converter bolts are tightened by angle and used once.",
    { safety: true },
  ),
  needs(
    "calibration-with-gearbox-work",
    ridgewolds,
    hasAny("torque-converter", "gearbox-clutch-packs"),
    has("gearbox-calibration"),
    "Line pressure and lock-up have to be told what they hold now, or the new clutches slip like the old.",
  ),
  needs(
    "cooler-after-gearbox-work",
    ridgewolds,
    has("gearbox-clutch-packs"),
    has("gearbox-cooler"),
    "Lining from the old clutches stays in the old cooler and comes back into the new gearbox.",
  ),
  needs(
    "fan-on-cooler",
    towing,
    has("gearbox-cooler-fan"),
    has("gearbox-cooler"),
    "The fan blows through the gearbox cooler; it has to be there.",
  ),
  needs(
    "gearbox-oil-before-towing",
    towing,
    all(hasAny("tow-3000", "tow-3500"), atLeast("odometerKm", 80_001)),
    has("gearbox-oil-service"),
    "Past 80,000 km the gearbox oil has lost what protects it from heat, and a heavy trailer brings the heat.",
  ),
];

const clutch: readonly CatalogueRule[] = [
  needs(
    "bearing-with-clutch",
    ["orrismere-gt44", "bramlet-trail-20"],
    hasAny("clutch-standard-gt44", "clutch-bramlet"),
    has("release-bearing"),
    "The release bearing has worn with the clutch; the gearbox does not come out again for it.",
  ),
  excludes(
    "no-standard-clutch-under-boost",
    gt44,
    has("blower-19-gt44"),
    has("clutch-standard-gt44"),
    "The standard clutch holds 660 N·m static, too little for the boosted engine with the quarter that is kept in hand: it would slip within weeks.",
  ),
  needs(
    "bolts-with-flywheel-off",
    gt44,
    hasAny("dual-mass-flywheel", "rear-main-seal"),
    has("flywheel-bolts"),
    "The flywheel comes off, and its bolts are tightened by angle and used once.",
    { safety: true },
  ),
  needs(
    "flywheel-past-120000",
    gt44,
    all(has("clutch-standard-gt44"), atLeast("odometerKm", 120_001)),
    has("dual-mass-flywheel"),
    "A dual-mass flywheel is worn when its second clutch is due: rattling springs take the new clutch with them.",
  ),
  needs(
    "seal-past-120000",
    [...gt44, ...bramlet],
    all(hasAny("clutch-800", "clutch-standard-gt44", "clutch-bramlet"), atLeast("odometerKm", 120_001)),
    has("rear-main-seal"),
    "The rear main seal costs little while the gearbox is out, and a whole clutch when it leaks later.",
  ),
];

const axles: readonly CatalogueRule[] = [
  needs(
    "seals-with-axle-opened",
    everyModel,
    hasAny("limited-slip-gt44", "rear-locker", "lower-final-drive"),
    hasAll("axle-seals", "axle-oil"),
    "Crush sleeve, pinion nut and seals are used once, and the axle is filled again with its own oil.",
    { safety: true },
  ),
  needs(
    "speedometer-after-final-drive",
    bramlet,
    has("lower-final-drive"),
    has("speedometer-recalibration"),
    "The speed is taken at the gearbox: with a lower final drive the speedometer shows too much.",
    { safety: true, source: source.speedometer },
  ),
  needs(
    "slip-for-track-under-boost",
    gt44,
    all(has("track-days"), has("blower-19-gt44")),
    any(has("limited-slip-gt44"), atLeast("limitedSlipFitted", 1)),
    "An open differential spins its inner wheel out of every bend on a track, and shears what carries it.",
  ),
];

export const drivelineRules: readonly CatalogueRule[] = [
  ...emissions,
  ...exhaust,
  ...gearbox,
  ...clutch,
  ...axles,
];
