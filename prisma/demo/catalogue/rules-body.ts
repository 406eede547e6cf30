import { all, any, atLeast, has, hasAll, hasAny } from "./condition";
import { boosted, everyModel, ridgewolds, towing } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Bars, lamps, electrics and what is sold as a visit. Common practice, no source, unless it says otherwise. */
const vale = ["vale-30td"] as const;
const anyBlower = hasAny("blower-24-92", "blower-19-88", "blower-19-80");

const body: readonly CatalogueRule[] = [
  needs(
    "bar-for-winch",
    ridgewolds,
    hasAny("high-mount-winch", "low-mount-winch"),
    has("front-bar"),
    "A winch pulls with tonnes: it is bolted to a bar that is made and listed for it, never to the body.",
    { safety: true },
  ),
  needs(
    "camera-behind-bar",
    ridgewolds,
    all(has("front-bar"), atLeast("driverCamera", 1)),
    hasAll("camera-recalibration", "headlamp-aim"),
    "Radar and lamps sit behind the bar and come off with it: they are taught and aimed again.",
    { safety: true, source: source.frontal },
  ),
  needs(
    "aim-with-lamps",
    everyModel,
    hasAny("driving-lamps", "light-bar"),
    has("headlamp-aim"),
    "Extra lamps work with high beam only and are aimed with it: dazzling others is an offence.",
    { source: source.frontal },
  ),
  needs(
    "place-for-light-bar",
    ridgewolds,
    has("light-bar"),
    hasAny("front-bar", "roof-rack"),
    "The light bar is carried by a front bar or a roof rack.",
  ),
  excludes(
    "cooler-covered",
    ridgewolds,
    all(anyBlower, has("low-mount-winch"), has("light-bar")),
    has("driving-lamps"),
    "Winch, light bar and lamps together cover more than 15 % of the cooler stack.",
  ),
  needs(
    "spare-cooling-for-plates",
    ridgewolds,
    all(has("underbody-plates"), anyBlower, hasAny("tow-3000", "tow-3500")),
    has("gearbox-cooler"),
    "Plates keep the air off the gearbox: with boost and a heavy trailer it needs its own cooler.",
  ),
  needs(
    "clear-sensors-for-film",
    everyModel,
    all(has("paint-film"), has("front-bar")),
    has("camera-recalibration"),
    "Film is laid around the radar, which is taught again after it.",
  ),
];

const tray: readonly CatalogueRule[] = [
  needs(
    "weighed-with-canopy",
    vale,
    hasAll("ute-canopy", "tray-drawers"),
    has("weighbridge"),
    "Canopy and drawers are 160 kg behind the cab before anything is packed: weighed, so that the owner knows what is left.",
  ),
  needs(
    "level-with-tray-load",
    vale,
    all(has("carries-250"), hasAny("tow-2000", "tow-3000")),
    hasAny("air-springs-rear", "gvm-kit-30td"),
    "With 250 kg in the tray and a trailer the rear sags, the lamps dazzle and the front steers lightly.",
    { safety: true },
  ),
];

const electrics: readonly CatalogueRule[] = [
  needs(
    "second-battery-for-camp",
    towing,
    has("camp-loads"),
    has("second-battery"),
    "A fridge empties the starter battery in a night, far from anybody who can help.",
  ),
  needs(
    "alternator-for-camp-and-boost",
    ridgewolds,
    all(anyBlower, has("second-battery")),
    has("alternator-upgrade"),
    "Fuel pumps and cooler pump of a boosted engine slow down when the second battery draws its full charge at idle.",
  ),
];

const visits: readonly CatalogueRule[] = [
  needs(
    "adaptors-for-runs",
    everyModel,
    hasAny("dyno-power-runs", "second-dyno-visit"),
    any(atLeast("hubAdaptors", 4), atLeast("provenTwoWheelMode", 1)),
    "The hub dyno needs four adaptors of this stud pattern, or a two-wheel mode proven for the model.",
  ),
  needs(
    "calibration-for-second-visit",
    [...boosted, ...vale],
    has("second-dyno-visit"),
    hasAny("boost-calibration", "tow-calibration-diesel", "calibration-rewrite"),
    "A second visit goes on with a calibration of ours; without one there is nothing to set.",
  ),
  needs(
    "road-test-after-tune",
    vale,
    has("tow-calibration-diesel"),
    has("road-test-and-pack"),
    "Monitors and filter regeneration are seen through on the road before the keys are given back.",
    { safety: true },
  ),
  excludes(
    "runs-within-calibration",
    [...boosted, ...vale],
    hasAny("dyno-tuning-boost", "dyno-tuning-diesel"),
    has("dyno-power-runs"),
    "The dyno calibration ends with three proven runs: they are in its price.",
  ),
  needs(
    "re-write-proven",
    [...boosted, ...vale],
    has("calibration-rewrite"),
    has("dyno-power-runs"),
    "What is written again is proven again by three runs.",
  ),
];

export const bodyRules: readonly CatalogueRule[] = [...body, ...tray, ...electrics, ...visits];
