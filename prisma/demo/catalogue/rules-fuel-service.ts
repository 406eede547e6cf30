import { all, atLeast, has, hasAll, hasAny, not } from "./condition";
import { boosted, everyModel, ridgewolds, towing } from "./item";
import { excludes, needs } from "./rule";
import { source } from "./sources";
import type { CatalogueRule } from "./types";

/* Fuel, cooling, intake and what is used once there. Common practice, no source, unless it says otherwise. */
const anyBlower = hasAny("blower-24-92", "blower-19-88", "blower-19-80", "blower-19-gt44");
const vale = ["vale-30td"] as const;
const gt44 = ["orrismere-gt44"] as const;

const fuel: readonly CatalogueRule[] = [
  needs(
    "seals-with-port-injectors",
    boosted,
    hasAny("port-injectors-gt44", "port-injection-kit"),
    has("port-injector-seals"),
    "Port injectors seal on rings that are used once; an old ring weeps fuel onto a hot engine.",
    { safety: true },
  ),
  needs(
    "calibration-with-injectors",
    gt44,
    has("port-injectors-gt44"),
    has("boost-calibration"),
    "Larger injectors deliver half as much again for the same pulse: without their calibration the engine floods.",
    { safety: true },
  ),
  needs(
    "seal-with-tank-opened",
    everyModel,
    hasAny("tank-pump-upgrade", "long-range-tank"),
    has("tank-ring-seal"),
    "The ring that seals the tank swells once it has been in fuel and does not go back: a used one lets vapour out.",
    { safety: true },
  ),
  needs(
    "controller-for-e85-pump",
    ridgewolds,
    all(has("tank-pump-upgrade"), has("runs-on-e85")),
    has("pump-controller"),
    "On E85 the tank pump runs near full flow for long: the standard wiring drops too much voltage and the pump slows.",
  ),
  excludes(
    "long-tank-not-for-e85",
    ridgewolds,
    has("runs-on-e85"),
    has("long-range-tank"),
    "Hoses and lining of the long-range tank are not listed for E85.",
    { safety: true },
  ),
  needs(
    "certificate-for-tank",
    ridgewolds,
    has("long-range-tank"),
    hasAll("engineer-certificate", "requirements-application"),
    "A changed fuel tank is usually certified, and the authority is asked before the work starts; confirm with the authority.",
    { safety: true, source: source.fuelTank },
  ),
  needs(
    "crate-for-large-goods",
    ridgewolds,
    hasAny("long-range-tank", "gearbox-clutch-packs"),
    has("crate-freight"),
    "It travels in a crate of its own, and the carrier charges by volume.",
  ),
  needs(
    "washers-with-diesel-injectors",
    vale,
    has("diesel-injectors"),
    has("diesel-injector-seals"),
    "Washers and high-pressure pipes seal once; a used pipe can spray fuel at 180 MPa, which cuts skin.",
    { safety: true },
  ),
  needs(
    "balance-after-injectors",
    vale,
    has("diesel-injectors"),
    hasAll("injector-balance-test", "road-test-and-pack"),
    "New injectors are coded to their cylinders, and the balance test and a road test show that each got its own code.",
  ),
  needs(
    "balance-before-tune",
    vale,
    all(has("tow-calibration-diesel"), atLeast("odometerKm", 80_001)),
    has("injector-balance-test"),
    "Past 80,000 km an injector that over-delivers can melt a piston once more is asked: all four are measured first.",
    { safety: true },
  ),
  needs(
    "prefilter-past-120000",
    vale,
    all(has("diesel-injectors"), atLeast("odometerKm", 120_001)),
    has("diesel-prefilter"),
    "Injectors that wore out on dirty fuel will do so again: the pre-filter and its water alarm protect the new set.",
  ),
  needs(
    "gaskets-with-intake-off",
    ridgewolds,
    all(hasAny("port-clean", "hp-pump-upgrade", "port-injection-kit", "follower-check"), not(anyBlower)),
    has("intake-gaskets"),
    "The intake manifold comes off for this; its gaskets are used once. A blower kit brings its own.",
  ),
];

const cooling: readonly CatalogueRule[] = [
  needs(
    "hoses-with-radiator",
    towing,
    hasAny("radiator-57", "radiator-30td"),
    has("radiator-hoses"),
    "Hoses that have taken the shape of the old necks leak on the new ones.",
  ),
  needs(
    "coolant-with-radiator",
    towing,
    hasAny("radiator-57", "radiator-30td"),
    hasAll("coolant-fill", "cooling-test"),
    "The circuit is empty: it gets new coolant and is pressure-tested before the engine runs.",
  ),
  needs(
    "oil-with-oil-cooler",
    gt44,
    has("oil-cooler-gt44"),
    has("oil-service"),
    "The cooler and its lines hold a litre of oil, and the filter comes off for the adaptor.",
  ),
  needs(
    "cooling-test-before-heavy-towing",
    towing,
    has("tow-3500"),
    has("cooling-test"),
    "A weak cap or hose shows on the first long grade: it is found on the pressure test instead.",
  ),
  needs(
    "cooling-test-before-power-runs",
    everyModel,
    all(has("dyno-power-runs"), atLeast("odometerKm", 120_001)),
    has("cooling-test"),
    "A full-load run is the hardest minute of an old cooling system's year.",
  ),
  needs(
    "cooling-test-before-track",
    gt44,
    has("track-days"),
    has("cooling-test"),
    "Twenty minutes at full load find every weak hose.",
  ),
  excludes(
    "winch-before-heavy-towing",
    towing,
    has("tow-3500"),
    has("high-mount-winch"),
    "A high-mounted winch takes a fifth of the cooling air that a 3,500 kg trailer needs on a grade.",
  ),
];

const intake: readonly CatalogueRule[] = [
  needs(
    "smoke-test-for-raised-intake",
    [...towing, "bramlet-trail-20"],
    has("raised-intake"),
    has("smoke-test"),
    "A raised intake that leaks behind its mouth breathes dust, or water: the smoke test proves every joint.",
    { safety: true },
  ),
  needs(
    "smoke-test-for-separator",
    [...boosted, "vale-30td"],
    has("oil-separator"),
    has("smoke-test"),
    "The crankcase circuit must be tight and closed: what leaks there is an emission, and unmetered air.",
    { source: source.emissions },
  ),
  needs(
    "plugs-before-power-runs",
    ["bramlet-trail-20"],
    all(has("dyno-power-runs"), atLeast("odometerKm", 80_001)),
    has("plugs-four"),
    "Plugs past 80,000 km misfire at full load, and the runs would measure the plugs.",
  ),
  excludes(
    "rewrite-with-new-calibration",
    [...boosted, "vale-30td"],
    hasAny("boost-calibration", "tow-calibration-diesel"),
    has("calibration-rewrite"),
    "The controller is written new in this build anyway; the re-write is for a calibration of ours that a dealer has overwritten.",
  ),
];

export const fuelServiceRules: readonly CatalogueRule[] = [...fuel, ...cooling, ...intake];
