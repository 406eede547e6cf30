import { ridgewolds } from "./item";
import { touringPackages } from "./packages-touring";
import type { CataloguePackage } from "./types";

const referenceCondition = "petrol 98, 25 °C, sea level, corrected to SAE J1349";
const remedy =
  "If three repeatable runs do not reach the lower figure we work on at our cost, then reduce the price, and in the end take the parts off and refund them.";

const boostAssumptions = [
  "The pre-build inspection passes and the baseline lies within 3 % of a healthy standard vehicle.",
  "The owner buys petrol 98 and the calibration is set on it.",
  "No part fitted by others lies in the path of air, fuel, ignition or exhaust.",
];
const boostExclusions = [
  "Repair of faults found by the inspection; each is quoted as a variation.",
  "Seized or broken fasteners beyond one hour.",
  "Removal of any emission control: we do not do it.",
];
/** What a hot day takes is what the forecast of the package has for it. */
const boostCautions = (hotDayShare: string) => [
  "Not for road use until the certificate is attached and the authority's conditions are met.",
  "A dealer software update overwrites the calibration: tell them first, and us after.",
  `On a 43 °C day expect about ${hotDayShare} less power and stay off full load while towing uphill.`,
  "Tell your insurer before you drive it.",
];

const boostCommon = [
  "charge-cooler",
  "boost-calibration",
  "controller-licence-credit",
  "pre-build-inspection",
  "dyno-tuning-boost",
  "commissioning",
  "retorque-visit",
  "engineer-certificate",
  "fluids-and-freight",
  "dyno-fuel",
];

const gt44 = [
  "blower-19-gt44",
  "port-injectors-gt44",
  "port-injector-seals",
  ...boostCommon,
  "plugs-one-step",
  "clutch-800",
  "flywheel-bolts",
];

export const packages: readonly CataloguePackage[] = [
  {
    id: "long-haul-19",
    name: "Long Haul 1.9",
    models: ridgewolds,
    outcome: "Half a gear more on every hill: holds a 2 t van at the limit without hunting.",
    items: ["blower-19-88", ...boostCommon, "plugs-one-step"],
    promise: { at: "hubs", lowKw: 309, highKw: 326, referenceCondition, remedy },
    assumptions: boostAssumptions,
    exclusions: boostExclusions,
    cautions: boostCautions("a tenth"),
  },
  {
    id: "long-grade-24",
    name: "Long Grade 2.4",
    models: ridgewolds,
    outcome: "Pulls hard from 2,000 rpm and keeps pulling up a long grade, with the fuel system to feed it.",
    items: [
      "blower-24-92",
      ...boostCommon,
      "belt-10-rib",
      "crank-pin-kit",
      "hp-pump-upgrade",
      "hp-pipes-and-seals",
      "follower-check",
      "oil-service",
      "plugs-two-step",
      "gearbox-calibration",
    ],
    promise: { at: "hubs", lowKw: 325, highKw: 375, referenceCondition, remedy },
    assumptions: boostAssumptions,
    exclusions: boostExclusions,
    cautions: boostCautions("a seventh"),
  },
  {
    id: "tow-ready",
    name: "Tow Ready",
    models: ["ridgewold-57", "vale-30td"],
    outcome: "A braked 3 t trailer, worked from the driver's seat, with a gearbox that stays cool.",
    items: ["tow-3000", "brake-controller", "twelve-pin-socket", "gearbox-cooler"],
    promise: null,
    assumptions: ["The tow bar fitted is rated for the trailer and its ball load."],
    exclusions: ["Tow bar, weight-distribution hitch and work on the trailer."],
    cautions: [
      "Ball load counts against payload and rear axle: weigh the combination, loaded as you travel.",
      "Test the trailer brakes at walking pace before every trip.",
    ],
  },
  {
    id: "stand-tall",
    name: "Stand Tall",
    models: ["ridgewold-57"],
    outcome: "33-inch tyres under a 50 mm lift, aligned, with speedometer, camera and lamps set to match.",
    items: [
      "tyres-33",
      "lift-50",
      "spare-carrier",
      "tyre-placard",
      "speedometer-recalibration",
      "wheel-alignment",
      "camera-recalibration",
      "headlamp-aim",
      "engineer-certificate",
    ],
    promise: null,
    assumptions: ["Wheels are the standard 18-inch ones, straight and uncracked."],
    exclusions: ["Guard trimming beyond the inner lip."],
    cautions: [
      "The vehicle is taller and slower to turn: drive it gently until you know it.",
      "The tyres are marked for 140 km/h at most.",
      "Re-torque the wheel nuts after 50 to 100 km.",
    ],
  },
  {
    id: "dark-trim-pack",
    name: "Dark Trim",
    models: [...ridgewolds, "vale-30td"],
    outcome: "Grille, badges and mirror caps in satin black.",
    items: ["dark-trim"],
    promise: null,
    assumptions: ["Paint under the badges is sound."],
    exclusions: ["Paint correction."],
    cautions: ["No pressure washer within 300 mm for two weeks."],
  },
  {
    id: "grand-tour-44",
    name: "Grand Tour 4.4",
    models: ["orrismere-gt44"],
    outcome: "Overtakes in the gear it is in: over a quarter more torque, and a clutch that holds it.",
    items: gt44,
    promise: { at: "hubs", lowKw: 265, highKw: 292, referenceCondition, remedy },
    assumptions: boostAssumptions,
    exclusions: boostExclusions,
    cautions: boostCautions("an eighth"),
  },
  ...touringPackages,
];
