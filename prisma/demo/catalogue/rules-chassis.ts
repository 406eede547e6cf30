import { all, any, atLeast, has, hasAll, hasAny } from "./condition";
import { everyModel, ridgewolds } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Tyres, lift, towing, clutch, the diesel and the small 4WD. Common practice, no source, unless it says otherwise. */
export const chassisRules: readonly CatalogueRule[] = [
  needs(
    "lift-for-33",
    ridgewolds,
    has("tyres-33"),
    any(has("lift-50"), atLeast("liftMm", 50)),
    "33-inch tyres touch the guards at full travel without 50 mm of lift.",
    { safety: true },
  ),
  needs(
    "fit-out-for-33",
    ridgewolds,
    has("tyres-33"),
    hasAll("speedometer-recalibration", "spare-carrier", "tyre-placard"),
    "The speedometer reads low, the spare no longer fits its place, and the placard must say load, pressure and 140 km/h.",
    { safety: true, source: source.tyreSpeed },
  ),
  needs(
    "align-after-lift",
    everyModel,
    hasAny("lift-50", "tyres-33"),
    hasAll("wheel-alignment", "camera-recalibration", "headlamp-aim"),
    "Ride height or diameter has changed: alignment first, then camera and radar, then the headlamps.",
    { safety: true },
  ),
  needs(
    "certificate-for-tall-lift",
    ridgewolds,
    all(has("lift-50"), any(atLeast("tallTyres", 1), has("tyres-33"))),
    has("engineer-certificate"),
    "Lift and taller tyres together raise the vehicle more than 50 mm, which usually needs a certificate; confirm with the authority.",
    { safety: true, source: source.rideHeight },
  ),
  needs(
    "fit-out-for-heavy-trailer",
    [...ridgewolds, "vale-30td"],
    any(has("tow-3000"), atLeast("trailerGtmKg", 2_001)),
    hasAll("brake-controller", "twelve-pin-socket", "gearbox-cooler"),
    "A trailer above 2,000 kg has brakes of its own that must be worked from the driver's seat, and its grade heats the gearbox.",
    { safety: true, source: source.trailerBrakes },
  ),
  needs(
    "brakes-for-trailer",
    [...ridgewolds, "vale-30td"],
    has("tow-2000"),
    has("brake-controller"),
    "A trailer with electric brakes needs a controller in the vehicle.",
    { safety: true },
  ),
  needs(
    "diesel-emissions-in-place",
    ["vale-30td"],
    has("tow-calibration-diesel"),
    all(atLeast("dieselFilterFitted", 1), atLeast("exhaustRecirculationFitted", 1)),
    "The filter and the exhaust recirculation must be fitted and working: we calibrate no vehicle without them.",
    { safety: true, source: source.emissions },
  ),
  needs(
    "intercooler-for-towing-diesel",
    ["vale-30td"],
    all(has("tow-calibration-diesel"), any(has("tow-3000"), atLeast("trailerGtmKg", 2_501))),
    has("ute-intercooler"),
    "Above 2,500 kg on a grade the standard intercooler cannot hold the charge temperature.",
  ),
  needs(
    "probe-for-diesel",
    ["vale-30td"],
    has("tow-calibration-diesel"),
    has("exhaust-probe"),
    "The calibration is set against exhaust temperature, and the driver has to see it on a grade.",
  ),
  needs(
    "dyno-for-diesel",
    ["vale-30td"],
    has("tow-calibration-diesel"),
    has("dyno-tuning-diesel"),
    "The tow calibration is set and proven on the dyno.",
  ),
  needs(
    "inspect-before-diesel",
    ["vale-30td"],
    has("tow-calibration-diesel"),
    any(has("pre-build-inspection"), atLeast("inspectionPassed", 1)),
    "Injector correction, boost leaks and filter loading are looked at before more is asked.",
  ),
  needs(
    "bolts-with-clutch",
    ["orrismere-gt44"],
    has("clutch-800"),
    has("flywheel-bolts"),
    "Flywheel bolts are tightened by angle and used once.",
    { safety: true },
  ),
  excludes(
    "no-dual-mass-with-clutch",
    ["orrismere-gt44"],
    has("clutch-800"),
    has("dual-mass-flywheel"),
    "Above 560 N·m the dual-mass flywheel strikes its stops; the 800 N·m clutch comes with a solid one.",
  ),
  needs(
    "final-drive-for-tall-tyres",
    ["bramlet-trail-20"],
    has("tyres-tall-small-4wd"),
    has("speedometer-recalibration"),
    "The speedometer reads low with a larger diameter.",
    { safety: true, source: source.speedometer },
  ),
];
