import { allItems } from "./all-items";
import { pulleyDemand, pulleyRelief } from "./duty-points";
import { everyModel, ridgewolds, towing } from "./item";
import { frontAxleShareOf, replacedBy, trailerKgOf } from "./item-chassis";
import { modelChassis } from "./model-chassis";
import { capacity } from "./rule";
import { source } from "./sources";
import type { Amount, CapacityRule, CatalogueRule, ModelId } from "./types";

/*
 * What the vehicle carries, tows, stops and cools. The spares are what plates and masses leave with every seat taken;
 * what brakes and radiator are asked is common practice, no source.
 */
const heavyItems = allItems.filter(({ massKg }) => massKg > 0);
const parts = heavyItems.filter(({ id }) => trailerKgOf(id) === null);

/** What comes off for a part, and what of it the axles carry: facts of the model. */
const frontFact: Readonly<Record<string, string>> = { tyreSetKg: "tyreSetFrontKg", liftKg: "liftFrontKg" };
const rearFact: Readonly<Record<string, string>> = { tyreSetKg: "tyreSetRearKg", liftKg: "liftRearKg" };

/** Amounts above nought; of a part that takes the place of a standard one only the difference counts. */
function amounts(
  entries: readonly (readonly [string, number])[],
  factOf: (replaced: string) => string | undefined = (replaced) => replaced,
): Readonly<Record<string, Amount>> {
  return Object.fromEntries(
    entries
      .filter(([, kg]) => kg > 0)
      .map(([id, whole]) => {
        const lessFact = factOf(replacedBy(id) ?? "");
        return [id, lessFact ? { whole, lessFact } : whole];
      }),
  );
}

/** Everything that weighs something, the load on the ball included. */
const massesKg = amounts(heavyItems.map(({ id, massKg }) => [id, massKg]));

/** What of it the front axle carries. What lifts the front is left out: a trailer is not always behind. */
const frontAxleKg = amounts(
  parts.map(({ id, massKg }) => [id, Math.round(massKg * frontAxleShareOf(id))]),
  (replaced) => frontFact[replaced],
);

/** What the rear axle carries: of the ball more than its load, by the lever behind the axle. */
function rearAxleKg(model: ModelId): Readonly<Record<string, Amount>> {
  const { ballBehindRearAxleMm, wheelbaseMm } = modelChassis[model].masses;
  const lever = 1 + ballBehindRearAxleMm / wheelbaseMm;
  return amounts(
    heavyItems.map(({ id, massKg }) => [
      id,
      Math.round(massKg * (trailerKgOf(id) === null ? 1 - frontAxleShareOf(id) : lever)),
    ]),
    (replaced) => rearFact[replaced],
  );
}

/** Parts, and the whole trailer, its ball load in it. */
const combinationKg = amounts(heavyItems.map(({ id, massKg }) => [id, trailerKgOf(id) ?? massKg]));

/* Of ute and small 4WD the gross mass is reached before the rear axle's rating, wherever the load sits. */
const rearAxle = (id: string, models: readonly [ModelId, ...ModelId[]]): CapacityRule =>
  capacity({
    id,
    models,
    quantity: "spare load on the rear axle with every seat taken",
    unit: "kg",
    link: "rear-axle",
    baseFact: "rearAxleSpareKg",
    reservePct: 0,
    safety: true,
    supply: { "gvm-kit": 250, "gvm-kit-30td": 200 },
    demand: rearAxleKg(models[0]),
    because:
      "The ball pushes on the rear axle with more than its load, by the lever behind it: the axle would carry more than its plate allows.",
  });

export const loadRules: readonly CatalogueRule[] = [
  capacity({
    id: "payload",
    models: everyModel,
    quantity: "payload with every seat taken",
    unit: "kg",
    link: "payload",
    baseFact: "payloadSpareKg",
    reservePct: 0,
    safety: true,
    supply: { "gvm-kit": 250, "gvm-kit-30td": 230 },
    demand: massesKg,
    because: "With every seat taken and the ball load the vehicle would be over its gross mass.",
  }),
  capacity({
    id: "front-axle",
    models: ridgewolds,
    quantity: "spare load on the front axle",
    unit: "kg",
    link: "front-axle",
    baseFact: "frontAxleSpareKg",
    reservePct: 0,
    safety: true,
    supply: { "front-springs": 60, "gvm-kit": 60, "gvm-kit-30td": 50 },
    demand: frontAxleKg,
    because: "The front axle would carry more than it may.",
  }),
  rearAxle("rear-axle-wagon", ["ridgewold-57", "ridgewold-57-lift"]),
  rearAxle("rear-axle-sedan", ["orrismere-gt44"]),
  capacity({
    id: "combination",
    models: towing,
    quantity: "trailer and parts within the combination mass, every seat taken",
    unit: "kg",
    link: "combination",
    baseFact: "combinationSpareKg",
    reservePct: 0,
    safety: true,
    source: source.combination,
    supply: {},
    demand: combinationKg,
    because:
      "Vehicle and trailer together may not pass the combination mass on the plate, and no part raises it: a lighter trailer, or fewer people and less load.",
  }),
  capacity({
    id: "tow-on-grade",
    models: towing,
    quantity: "trailer on a long grade at 43 °C",
    unit: "kg",
    link: "towing",
    baseFact: "towOnGradeKg",
    reservePct: 0,
    supply: { "gearbox-cooler": 700, "gearbox-cooler-fan": 400 },
    demand: {
      "tow-3500": 3_500,
      "tow-3000": 3_000,
      "tow-2000": 2_000,
      "tow-750": 750,
      "charge-cooler": 200,
    },
    because:
      "On a long hot grade the gearbox oil overheats; the charge cooler in front takes some of the cooling air.",
  }),
  capacity({
    id: "brakes",
    models: everyModel,
    quantity: "mass beyond a full vehicle that the brakes hold down a long grade",
    unit: "kg",
    link: "brakes",
    baseFact: "brakeSpareKg",
    reservePct: 0,
    safety: true,
    supply: {
      "brake-kit-57": 420,
      "brake-kit-gt44": 280,
      "brake-pads-touring": 160,
      "brake-pads-track-gt44": 120,
      "brake-pads-bramlet": 90,
    },
    demand: {
      "tow-3500": 525,
      "tow-3000": 450,
      "tow-2000": 300,
      "tow-1000": 150,
      "tow-750": 240,
      "gvm-kit": 250,
      "gvm-kit-30td": 230,
      "blower-24-92": 120,
      "blower-19-88": 90,
      "blower-19-80": 90,
      "blower-19-gt44": 180,
      "tow-calibration-diesel": 60,
      "track-days": 260,
      "tyres-33": 60,
      "tyres-at-30td": 40,
      "tyres-tall-small-4wd": 30,
      "roof-rack": 40,
      ...pulleyDemand("brakes"),
    },
    because:
      "Down a long grade the brakes turn weight and speed into heat; past this they fade and the pedal goes long. A licensed repairer judges them on the road.",
  }),
  capacity({
    id: "engine-cooling",
    models: [...towing, "orrismere-gt44"],
    quantity: "heat to the radiator at 43 °C beyond the standard engine's",
    unit: "kW",
    link: "radiator",
    baseFact: "coolingSpareKw",
    reservePct: 0,
    supply: {
      "radiator-57": 14,
      "radiator-30td": 12,
      "radiator-fans": 8,
      "oil-cooler-gt44": 8,
      ...pulleyRelief("engine-cooling", 0),
    },
    demand: {
      "blower-24-92": 22,
      "blower-19-88": 14,
      "blower-19-80": 18,
      "blower-19-gt44": 16,
      "tow-3500": 20,
      "tow-3000": 16,
      "tow-2000": 10,
      "tow-1000": 6,
      "tow-750": 4,
      "gearbox-cooler": 2,
      "tow-calibration-diesel": 12,
      "ute-intercooler": 3,
      "track-days": 10,
      "front-bar": 3,
      "high-mount-winch": 7,
      "low-mount-winch": 2,
      "driving-lamps": 2,
      "light-bar": 2,
      ...pulleyDemand("engine-cooling"),
    },
    because:
      "At 43 °C the engine would run hotter than its gauge likes: more heat is made, and what stands in front of the radiator takes its air.",
  }),
];
