import { all, any, atLeast, has, hasAll, hasAny } from "./condition";
import { boosted, ridgewolds } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* What goes with a blower, its pulley and its fuel: one duty point. Common practice, no source, unless it says otherwise. */
const large = has("blower-24-92");
const small = hasAny("blower-19-88", "blower-19-80", "blower-19-gt44");
const anyBlower = any(large, small);
const stronger = has("pulley-24-86");
const gt44 = ["orrismere-gt44"] as const;

const pulleys: readonly CatalogueRule[] = [
  needs(
    "pulley-of-the-24",
    ridgewolds,
    hasAny("pulley-24-98", "pulley-24-86"),
    large,
    "The 98 and 86 mm pulleys fit the shaft of the 2.4 blower only.",
  ),
  needs(
    "pulley-of-the-19",
    ridgewolds,
    has("pulley-19-84"),
    has("blower-19-88"),
    "The 84 mm pulley takes the place of the 88 mm one of the 1.9 kit.",
  ),
  needs(
    "pulley-of-the-gt44",
    gt44,
    has("pulley-gt44-96"),
    has("blower-19-gt44"),
    "The 96 mm pulley belongs to the blower of the GT 4.4.",
  ),
  needs(
    "gear-oil-with-pulley",
    boosted,
    hasAny("pulley-24-98", "pulley-24-86", "pulley-19-84", "pulley-gt44-96"),
    has("blower-oil"),
    "The blower's gear oil runs out when the pulley comes off; it is used once.",
  ),
  needs(
    "e85-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("runs-on-e85"),
    "At 77 kPa on petrol 98 the spark has to go back so far that the smaller pulley wins nothing and costs the knock margin; it pays on E85 only.",
    { safety: true },
  ),
  needs(
    "hot-kit-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("charge-cooler-hot-kit"),
    "The smaller pulley heats the charge by a few degrees more, and the standard cooler has nothing left on a hot day.",
    { safety: true },
  ),
  needs(
    "coils-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("high-energy-coils"),
    "Above 70 kPa of boost the standard coils misfire, even with the gap closed to 0.60 mm.",
  ),
  needs(
    "sensor-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("rail-pressure-sensor"),
    "The rail is run near the end of the standard sensor's range: without the larger one a drooping rail is not seen.",
    { safety: true },
  ),
  needs(
    "mounts-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("engine-mounts-57"),
    "The engine's mounts have to be good for its new torque; the certifier looks at them.",
    { source: source.engine },
  ),
  needs(
    "converter-for-stronger-pulley",
    ridgewolds,
    stronger,
    has("torque-converter"),
    "The lock-up clutch of the standard converter slips above 720 N·m and puts its lining into the gearbox oil.",
  ),
  needs(
    "clutch-packs-for-24-on-e85",
    ridgewolds,
    all(large, has("runs-on-e85")),
    has("gearbox-clutch-packs"),
    "On E85 the spark that petrol costs comes back: the 2.4 then makes about 790 N·m, more than the gearbox's own clutches hold.",
  ),
  needs(
    "second-visit-for-e85",
    ridgewolds,
    all(anyBlower, has("runs-on-e85")),
    has("second-dyno-visit"),
    "Blends differ from tank to tank: the map is looked at again after the first thousand kilometres.",
  ),
];

const boost: readonly CatalogueRule[] = [
  needs(
    "hot-kit-on-cooler",
    boosted,
    has("charge-cooler-hot-kit"),
    has("charge-cooler"),
    "The hot-climate kit is a second exchanger on the charge cooler's circuit; alone it cools nothing.",
  ),
  needs(
    "drive-parts-with-blower",
    boosted,
    hasAny("belt-8-rib", "belt-10-rib", "crank-pin-kit"),
    anyBlower,
    "Blower belt, tensioner and crank pin do nothing on an engine without a blower.",
  ),
  needs(
    "idler-on-wide-belt",
    ridgewolds,
    has("belt-wrap-idler"),
    has("belt-10-rib"),
    "The wrap idler is ten ribs wide and runs with the 10-rib belt.",
  ),
  needs(
    "cooler-with-blower",
    boosted,
    has("charge-cooler"),
    anyBlower,
    "The charge cooler sits in the blower's manifold: without the blower it has no place.",
  ),
  needs(
    "blower-for-boost-calibration",
    boosted,
    has("boost-calibration"),
    anyBlower,
    "The boosted calibration takes spark away and adds fuel for boost that is not there: it is never loaded without the blower.",
    { safety: true },
  ),
  excludes(
    "standard-plugs-under-boost",
    boosted,
    anyBlower,
    has("plugs-standard"),
    "Standard plugs glow under boost and light the charge before the spark does.",
    { safety: true },
  ),
  excludes(
    "no-95-map-for-24",
    ridgewolds,
    large,
    has("map-95"),
    "The 2.4 has no 95-octane map: at its boost there is no spark left to take away.",
    { safety: true },
  ),
  needs(
    "map-95-in-calibration",
    ridgewolds,
    has("map-95"),
    has("boost-calibration"),
    "The 95-octane map is a part of the boosted calibration.",
  ),
  needs(
    "e85-map-for-e85",
    ridgewolds,
    all(anyBlower, has("runs-on-e85")),
    has("e85-map"),
    "On E85 mixture and spark follow the blend in the tank: that is what the flexible-fuel map does.",
    { safety: true },
  ),
  needs(
    "sensor-for-e85-map",
    ridgewolds,
    has("e85-map"),
    hasAll("fuel-content-sensor", "boost-calibration"),
    "The flexible-fuel map is blind without the content sensor, and is part of the boosted calibration.",
    { safety: true },
  ),
  needs(
    "separator-past-120000",
    boosted,
    all(anyBlower, atLeast("odometerKm", 120_001)),
    has("oil-separator"),
    "Past 120,000 km more gas passes the rings; oil mist in the charge lowers its octane and brings knock.",
  ),
  needs(
    "coolant-past-120000",
    boosted,
    all(anyBlower, atLeast("odometerKm", 120_001)),
    has("coolant-fill"),
    "Old coolant has lost its inhibitor, and the blower adds heat: it is changed while the circuit is open.",
  ),
  needs(
    "filter-behind-raised-intake",
    ridgewolds,
    all(anyBlower, has("raised-intake")),
    has("dry-panel-filter"),
    "A blower pulls harder through a longer intake: the dry filter gives back what the raised intake costs.",
  ),
];

export const dutyPointRules: readonly CatalogueRule[] = [...pulleys, ...boost];
