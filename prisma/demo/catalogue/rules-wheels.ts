import { all, atLeast, has, hasAll, hasAny } from "./condition";
import { everyModel, ridgewolds, towing } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Tyres, wheels, ride height and gross mass. Common practice, no source, unless it says otherwise. */
const vale = ["vale-30td"] as const;
const gt44 = ["orrismere-gt44"] as const;
const bramlet = ["bramlet-trail-20"] as const;
const wheels = hasAny("wheels-alloy-18", "wheels-steel-17", "wheels-19-gt44", "wheels-15-bramlet");

const wheelsAndTyres: readonly CatalogueRule[] = [
  needs(
    "nuts-with-wheels",
    everyModel,
    wheels,
    has("wheel-nuts"),
    "Another wheel has another seat: the old nuts hold it on an edge, and it comes off.",
    { safety: true },
  ),
  needs(
    "nuts-checked-after-wheels",
    everyModel,
    wheels,
    has("wheel-nut-visit"),
    "New wheels settle on their hubs: the nuts are checked after 50 to 100 km, and the visit is in the price.",
    { safety: true },
  ),
  needs(
    "sensors-with-wheels",
    [...towing, ...gt44],
    hasAny("wheels-alloy-18", "wheels-steel-17", "wheels-19-gt44"),
    has("pressure-sensors"),
    "The old sensors stay in the old wheels, and without sensors the warning lamp stays on.",
  ),
  needs(
    "tyres-for-19-inch",
    gt44,
    has("wheels-19-gt44"),
    has("tyres-19-gt44"),
    "The standard 18-inch tyres do not go on 19-inch wheels.",
  ),
  needs(
    "wheels-for-19-inch-tyres",
    gt44,
    has("tyres-19-gt44"),
    has("wheels-19-gt44"),
    "19-inch tyres need the 19-inch wheels.",
  ),
  needs(
    "alignment-with-19-inch",
    gt44,
    has("wheels-19-gt44"),
    hasAll("wheel-alignment", "load-placard"),
    "The track grows by 18 mm, within the 26 mm that needs no approval: aligned, and the placard tells the new size.",
    { source: source.track },
  ),
  needs(
    "disposal-with-tyres",
    everyModel,
    hasAny("tyres-at-57", "tyres-at-30td", "tyres-track-gt44", "tyres-at-bramlet"),
    has("tyre-disposal"),
    "The old tyres leave with a licensed collector, or with the owner who says so.",
  ),
  needs(
    "speedometer-for-tall-ute-tyres",
    vale,
    has("tyres-at-30td"),
    has("speedometer-recalibration"),
    "The tyres are 3.5 % taller: without recalibration the speedometer would show less than the true speed.",
    { safety: true, source: source.speedometer },
  ),
  needs(
    "placard-for-ute-tyres",
    vale,
    hasAny("tyres-at-30td", "wheels-steel-17"),
    has("load-placard"),
    "The placard in the door must tell the size, load and pressure of what is fitted.",
    { source: source.tyreLoad },
  ),
  needs(
    "report-for-taller-tyres",
    [...vale, ...bramlet],
    hasAny("tyres-at-30td", "tyres-tall-small-4wd"),
    hasAll("engineer-certificate", "requirements-application"),
    "The diameter leaves the 15 mm that South Australia allows without an engineer's report; confirm with the authority.",
    { source: source.tyreDiameter },
  ),
  needs(
    "placard-for-small-4wd-tyres",
    bramlet,
    hasAny("tyres-at-bramlet", "tyres-tall-small-4wd"),
    has("load-placard"),
    "The placard in the door must tell the size, load and pressure of what is fitted.",
    { source: source.tyreLoad },
  ),
  needs(
    "alignment-with-track-tyres",
    gt44,
    has("tyres-track-gt44"),
    has("wheel-alignment"),
    "Track-day tyres wear out on their inner edge within a day on road settings.",
  ),
];

const rideHeight: readonly CatalogueRule[] = [
  needs(
    "alignment-after-height",
    ["vale-30td", "bramlet-trail-20", "orrismere-gt44"],
    hasAny("lift-40-30td", "lift-35-bramlet", "lowering-25-gt44"),
    hasAll("wheel-alignment", "headlamp-aim"),
    "Ride height has changed: the wheels point elsewhere, and so do the lamps.",
    { safety: true },
  ),
  needs(
    "alignment-after-arms",
    towing,
    hasAny("upper-arms", "front-springs"),
    has("wheel-alignment"),
    "Arms and springs set camber and caster: the wheels are aligned after them.",
    { safety: true },
  ),
  needs(
    "camera-after-height",
    [...vale, ...gt44],
    all(hasAny("lift-40-30td", "lowering-25-gt44", "tyres-at-30td"), atLeast("driverCamera", 1)),
    has("camera-recalibration"),
    "The driver-assistance camera looks higher or lower than it was taught: a degree too high brakes too late.",
    { safety: true },
  ),
  needs(
    "arms-with-ute-lift",
    vale,
    has("lift-40-30td"),
    has("upper-arms"),
    "With 40 mm more the standard arms cannot bring the caster back, and the ute wanders under braking.",
    { safety: true },
  ),
  needs(
    "bolts-with-suspension-apart",
    everyModel,
    hasAny("lift-40-30td", "lift-35-bramlet", "lowering-25-gt44", "upper-arms"),
    has("suspension-bolts"),
    "Lower-arm bolts are stretched when they are tightened: a used one can break.",
    { safety: true },
  ),
  needs(
    "hoses-with-lift",
    [...vale, ...bramlet],
    hasAny("lift-40-30td", "lift-35-bramlet"),
    has("brake-hoses-long"),
    "At full droop the standard brake hoses are pulled tight: the longer, marked ones are fitted.",
    { safety: true, source: source.generalSafety },
  ),
  excludes(
    "dampers-come-with-lift",
    towing,
    hasAny("lift-50", "lift-40-30td"),
    has("dampers-touring"),
    "The lift brings dampers of its own length; the touring ones are made for standard height.",
  ),
  excludes(
    "no-ball-load-when-lowered",
    gt44,
    has("lowering-25-gt44"),
    has("tow-1000"),
    "With the load on the ball the lowered rear rests on its bump stops.",
    { safety: true },
  ),
  needs(
    "lamps-with-air-springs",
    towing,
    has("air-springs-rear"),
    has("headlamp-aim"),
    "Level at the rear again, the lamps point lower than they were aimed.",
  ),
];

const grossMass: readonly CatalogueRule[] = [
  needs(
    "plate-with-gross-mass",
    towing,
    hasAny("gvm-kit", "gvm-kit-30td"),
    hasAll("mass-plate", "engineer-certificate"),
    "A higher gross mass counts only once it is certified and plated; until then the old plate holds. Confirm with the authority.",
    { safety: true, source: source.grossMass },
  ),
  excludes(
    "no-helpers-with-gross-mass",
    towing,
    hasAny("gvm-kit", "gvm-kit-30td"),
    has("air-springs-rear"),
    "The kit is certified on its own rear springs; helper air springs beside them void its certificate.",
    { source: source.grossMass },
  ),
  needs(
    "lane-change-when-tall-and-heavy",
    ridgewolds,
    all(has("gvm-kit"), has("tyres-33"), has("roof-rack")),
    has("lane-change-test"),
    "Raised, heavier and loaded on the roof: the signatory will want to see it change lanes before signing.",
    { safety: true, source: source.rideHeight },
  ),
  needs(
    "certificate-with-lane-change",
    ridgewolds,
    has("lane-change-test"),
    has("engineer-certificate"),
    "The lane-change test is a part of a certificate, driven with the signatory.",
  ),
];

export const wheelRules: readonly CatalogueRule[] = [...wheelsAndTyres, ...rideHeight, ...grossMass];
