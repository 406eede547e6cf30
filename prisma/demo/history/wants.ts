import type { ModelId } from "../catalogue/types";
import { packageItems } from "../package-items";

/** Something that customers ask for, how often it is done, and how such jobs turn out. Invented for the demo. */
export type Want = {
  readonly code: string;
  readonly packageCode: string | null;
  readonly items: readonly string[];
  readonly models: readonly ModelId[];
  /** Jobs done in the whole time. */
  readonly jobs: number;
  /** Share of quotes that are accepted. */
  readonly winRate: number;
  /** A vehicle has it once only, when set: one of each group. */
  readonly once: string | null;
  /** Jobs of this kind done before the history begins. */
  readonly doneBefore: number;
  /** Usual discount in per cent; one of these is picked. */
  readonly discounts: readonly number[];
  /** Share by which parts come dearer than quoted: mean. */
  readonly dearerParts: number;
  /** Share of jobs that come back. */
  readonly comebacks: number;
  /** Corrected power at the hubs after the job, mean and deviation. */
  readonly proof: {
    readonly kw: number;
    readonly deviation: number;
    readonly nm: number;
    readonly boostKPa: number;
  } | null;
  readonly goals: readonly string[];
};

const usual = {
  packageCode: null,
  doneBefore: 12,
  discounts: [0, 0, 0, 0, 5],
  dearerParts: 0.012,
  comebacks: 0.01,
  proof: null,
} as const;

const ridgewolds = ["ridgewold-57", "ridgewold-57-lift"] as const;

const bundle = (code: string) => ({ code, packageCode: code, items: packageItems(code) });

const boosted = {
  winRate: 0.42,
  models: ridgewolds,
  once: "boost",
  doneBefore: 0,
  discounts: [0, 2, 2.5, 3, 5],
  dearerParts: 0.05,
  comebacks: 0.12,
};

const packages: readonly Want[] = [
  {
    ...usual,
    ...boosted,
    ...bundle("long-grade-24"),
    jobs: 44,
    proof: { kw: 357, deviation: 14, nm: 648, boostKPa: 64 },
    goals: [
      "Pull the boat up the range in one gear.",
      "More pull in the middle, for the van.",
      "Overtake uphill.",
    ],
  },
  {
    ...usual,
    ...boosted,
    ...bundle("long-haul-19"),
    jobs: 38,
    dearerParts: 0.038,
    proof: { kw: 317, deviation: 4.5, nm: 588, boostKPa: 32 },
    goals: ["Hold 100 km/h with the caravan on.", "Half a gear more on every hill."],
  },
  {
    ...usual,
    ...bundle("tow-ready"),
    jobs: 134,
    winRate: 0.62,
    models: [...ridgewolds, "vale-30td"],
    once: "tow-ready",
    goals: ["Brakes for the van, set from the seat.", "Tow 3.0 t and keep the gearbox cool."],
  },
  {
    ...usual,
    ...bundle("stand-tall"),
    jobs: 62,
    winRate: 0.55,
    models: ["ridgewold-57"],
    once: "stand-tall",
    comebacks: 0.03,
    goals: ["Clear the ruts to the block.", "Taller, and the speedometer right."],
  },
  {
    ...usual,
    ...bundle("dark-trim-pack"),
    jobs: 92,
    winRate: 0.7,
    models: [...ridgewolds, "vale-30td"],
    once: "dark-trim",
    goals: ["No chrome."],
  },
];

const single = (
  code: string,
  items: readonly string[],
  models: readonly ModelId[],
  jobs: number,
  goal: string,
  more: Partial<Want> = {},
): Want => ({ ...usual, code, items, models, jobs, winRate: 0.72, once: code, goals: [goal], ...more });

const dieselTune = [
  "pre-build-inspection",
  "tow-calibration-diesel",
  "controller-licence-credit",
  "exhaust-probe",
  "dyno-tuning-diesel",
];

const singles: readonly Want[] = [
  single("cat-back-exhaust", ["cat-back-exhaust"], ridgewolds, 40, "A deeper note that does not drone."),
  single("oil-service", ["oil-service"], [...ridgewolds, "orrismere-gt44"], 52, "Oil service.", {
    once: null,
    winRate: 0.93,
  }),
  single(
    "wheel-alignment",
    ["wheel-alignment"],
    [...ridgewolds, "vale-30td", "bramlet-trail-20"],
    36,
    "Pulls to the left.",
    {
      once: null,
      winRate: 0.9,
    },
  ),
  single("diesel-tow", dieselTune, ["vale-30td"], 22, "Tow the float without smoke or heat."),
  single("alternator", ["alternator-upgrade"], ridgewolds, 14, "Run the fridge and the lamps."),
  single("front-bar", ["front-bar"], ["ridgewold-57"], 12, "A bar for the country at night."),
  single("gvm", ["gvm-kit"], ridgewolds, 10, "Legal with the tank full and five aboard."),
  single("headers", ["headers-gt44"], ["orrismere-gt44"], 8, "Headers for the track days."),
  single("clutch", ["clutch-800", "flywheel-bolts"], ["orrismere-gt44"], 7, "The clutch slips in fourth."),
  single(
    "small-tyres",
    ["tyres-tall-small-4wd", "speedometer-recalibration"],
    ["bramlet-trail-20"],
    11,
    "A little taller for the beach.",
  ),
  single("inspection", ["pre-build-inspection"], ["ridgewold-57"], 10, "Is it sound enough to build on?", {
    once: "inspection",
  }),
];

export const wants: readonly Want[] = [...packages, ...singles];
