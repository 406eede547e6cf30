import { all, any, atLeast, has, hasAll, hasAny } from "./condition";
import { boosted, everyModel, ridgewolds, towing } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Brakes and trailers. Common practice, no source, unless it says otherwise. */
const gt44 = ["orrismere-gt44"] as const;
const bramlet = ["bramlet-trail-20"] as const;
const kits = hasAny("brake-kit-57", "brake-kit-gt44");
const anyPads = hasAny(
  "brake-pads-standard",
  "brake-pads-touring",
  "brake-pads-track-gt44",
  "brake-pads-bramlet",
);

const brakes: readonly CatalogueRule[] = [
  needs(
    "seals-with-brakes-opened",
    everyModel,
    any(kits, hasAny("brake-hoses-long", "brake-hoses-gt44", "brake-discs-front")),
    has("brake-seals"),
    "Caliper bolts are stretch bolts and banjo washers are crushed: both are used once.",
    { safety: true },
  ),
  needs(
    "fluid-with-brakes-opened",
    everyModel,
    any(kits, hasAny("brake-hoses-long", "brake-hoses-gt44")),
    has("brake-fluid"),
    "The circuit is open: it is filled with fresh fluid and bled at every wheel.",
    { safety: true },
  ),
  needs(
    "test-after-brakes",
    everyModel,
    any(kits, anyPads),
    has("brake-test"),
    "New pads hold half as well until they are bedded in, and a brake is tested before it is given back.",
    { safety: true },
  ),
  needs(
    "certificate-for-brake-kit",
    boosted,
    kits,
    has("engineer-certificate"),
    "Another caliper and disc size changes the brake system, which is usually certified; confirm with the authority.",
    { safety: true, source: source.brakes },
  ),
  needs(
    "wheels-over-brake-kit",
    boosted,
    kits,
    atLeast("wheelInches", 18),
    "The caliper needs an 18-inch wheel over it.",
    { safety: true },
  ),
  needs(
    "pads-with-discs",
    everyModel,
    has("brake-discs-front"),
    anyPads,
    "Worn pads cut their grooves into the new discs.",
  ),
  needs(
    "pads-and-fluid-for-track",
    gt44,
    has("track-days"),
    hasAll("brake-pads-track-gt44", "brake-fluid"),
    "Road pads glaze and old fluid boils in the third lap, and then the pedal goes to the floor.",
    { safety: true },
  ),
  needs(
    "hoses-for-track",
    gt44,
    has("track-days"),
    has("brake-hoses-gt44"),
    "Rubber hoses swell when they are hot, and the pedal with them.",
  ),
  excludes(
    "no-track-pads-for-towing",
    gt44,
    has("brake-pads-track-gt44"),
    has("tow-1000"),
    "Cold, track pads bite late: not with a trailer behind.",
    { safety: true },
  ),
  needs(
    "towing-pads-for-heavy-trailer",
    towing,
    has("tow-3500"),
    has("brake-pads-touring"),
    "A seventh of a 3,500 kg trailer is stopped by the vehicle's own brakes, down the whole grade.",
    { safety: true },
  ),
  needs(
    "fluid-before-heavy-trailer",
    towing,
    all(has("tow-3500"), atLeast("odometerKm", 80_001)),
    has("brake-fluid"),
    "Brake fluid takes up water by the year: past 80,000 km it boils at a temperature that a long grade reaches.",
    { safety: true },
  ),
];

const heavy: readonly CatalogueRule[] = [
  needs(
    "brakes-for-3500",
    towing,
    has("tow-3500"),
    hasAll("brake-controller", "twelve-pin-socket"),
    "Above 2,000 kg on its wheels a trailer brakes on every wheel, worked from the driver's seat; the 12-pin socket carries the current.",
    { safety: true, source: source.trailerBrakes },
  ),
  needs(
    "breakaway-for-3500",
    towing,
    has("tow-3500"),
    has("breakaway-check"),
    "If it parts from the vehicle, a trailer above 2,000 kg brakes by itself and holds for 15 minutes: that is tried before it is towed.",
    { safety: true, source: source.trailerBrakes },
  ),
  needs(
    "bar-for-3500",
    towing,
    has("tow-3500"),
    any(has("tow-bar-3500"), atLeast("towBarRatedKg", 3_500)),
    "The bar it left the factory with is plated for 3,000 kg.",
    { safety: true },
  ),
  needs(
    "weighed-for-3500",
    towing,
    has("tow-3500"),
    has("weighbridge"),
    "At 3,500 kg no limit has much left: it is weighed axle by axle, loaded as it travels.",
    { safety: true },
  ),
  needs(
    "mirrors-for-3500",
    towing,
    has("tow-3500"),
    has("towing-mirrors"),
    "A van of that size is wider than the vehicle: without longer mirrors nobody sees what overtakes.",
    { safety: true },
  ),
  needs(
    "gearbox-cooled-for-3500",
    towing,
    has("tow-3500"),
    hasAll("gearbox-cooler", "oil-temperature-display"),
    "The gearbox oil is what overheats first, and the driver has to see it coming.",
  ),
  needs(
    "weighed-with-hitch",
    towing,
    has("weight-distribution-hitch"),
    has("weighbridge"),
    "The hitch is set by axle loads, with and without it, on a weighbridge; it raises no limit.",
  ),
  excludes(
    "trailer-heavier-than-2000",
    towing,
    atLeast("trailerGtmKg", 1_801),
    has("tow-2000"),
    "The trailer recorded for this vehicle is heavier than 2,000 kg with its ball load: choose the heavier towing.",
    { safety: true },
  ),
  excludes(
    "trailer-heavier-than-3000",
    towing,
    atLeast("trailerGtmKg", 2_701),
    has("tow-3000"),
    "The trailer recorded for this vehicle is heavier than 3,000 kg with its ball load: choose the heavier towing.",
    { safety: true },
  ),
];

const light: readonly CatalogueRule[] = [
  excludes(
    "trailer-needs-brakes",
    [...towing, ...gt44],
    atLeast("trailerGtmKg", 751),
    has("tow-750"),
    "The trailer recorded for this vehicle has more than 750 kg on its wheels and must have brakes.",
    { safety: true, source: source.trailerBrakes },
  ),
  needs(
    "bar-for-sedan",
    gt44,
    hasAny("tow-1000", "tow-750"),
    has("tow-bar-gt44"),
    "The GT 4.4 leaves the factory without a tow bar.",
    { safety: true },
  ),
  needs(
    "bar-for-small-4wd",
    bramlet,
    has("tow-1000"),
    has("tow-bar-bramlet"),
    "The Trail 2.0 leaves the factory without a tow bar.",
    { safety: true },
  ),
  needs(
    "lights-for-light-trailer",
    everyModel,
    hasAny("tow-1000", "tow-750"),
    hasAny("seven-pin-socket", "twelve-pin-socket"),
    "The trailer's brake and turn lamps need a socket.",
    { safety: true },
  ),
  needs(
    "lead-for-van-camera",
    towing,
    has("van-camera"),
    hasAny("twelve-pin-socket", "seven-pin-socket"),
    "The camera's lead runs beside the trailer socket and is tried with it.",
  ),
  needs(
    "weighed-with-long-tank",
    ridgewolds,
    all(has("long-range-tank"), hasAny("tow-3000", "tow-3500")),
    has("weighbridge"),
    "Sixty litres more behind the axle and a heavy ball load: it is weighed full before it travels.",
    { safety: true },
  ),
  needs(
    "brakes-for-boost-and-3500",
    ridgewolds,
    all(has("tow-3500"), hasAny("blower-24-92", "blower-19-88", "blower-19-80")),
    has("brake-kit-57"),
    "A boosted engine arrives at the bottom of the grade faster, with 3,500 kg behind: the front brakes are made for it.",
    { safety: true },
  ),
];

export const brakeTowRules: readonly CatalogueRule[] = [...brakes, ...heavy, ...light];
