import { everyModel, ridgewolds } from "./item";
import { frontAxleShareOf, replacedBy } from "./item-chassis";
import { chassisItems } from "./items-chassis";
import { engineItems } from "./items-engine";
import { capacity } from "./rule";
import type { Amount, CatalogueRule, ModelId } from "./types";

/*
 * What is asked against what can be given. Demands of the blowers agree with the mass balance of a boosted
 * 5.7 L engine at 6,000 rpm; bases, supplies and reserves are common practice, no source.
 */
const boosted: readonly ModelId[] = [...ridgewolds, "orrismere-gt44"];

const heavyItems = [...engineItems, ...chassisItems].filter(({ massKg }) => massKg > 0);

/** Of a part that takes the place of a standard one only the difference counts. */
function inPlaceOf(fact: string | undefined, amount: number): Amount {
  return fact === undefined ? amount : { whole: amount, lessFact: fact };
}

/** Everything that weighs something, the load on the ball included. */
const massesKg = Object.fromEntries(
  heavyItems.map(({ id, massKg }) => [id, inPlaceOf(replacedBy(id), massKg)]),
);

/** What the front axle carries of that which comes off, by the fact of its mass. */
const frontFact: Readonly<Record<string, string>> = { tyreSetKg: "tyreSetFrontKg", liftKg: "liftFrontKg" };

/** What of it the front axle carries. What lifts the front is left out: a trailer is not always behind. */
const frontAxleKg = Object.fromEntries(
  heavyItems
    .filter(({ kind }) => kind !== "duty")
    .map(({ id, massKg }) => [id, Math.round(massKg * frontAxleShareOf(id))] as const)
    .filter(([, kg]) => kg > 0)
    .map(([id, kg]) => [id, inPlaceOf(frontFact[replacedBy(id) ?? ""], kg)] as const),
);

export const capacityRules: readonly CatalogueRule[] = [
  capacity({
    id: "high-pressure-fuel",
    models: ridgewolds,
    quantity: "high-pressure fuel at 6,000 rpm",
    unit: "kg/h",
    link: "high-pressure-pump",
    baseFact: "highPressureFuelKgPerH",
    reservePct: 10,
    safety: true,
    supply: { "hp-pump-upgrade": 40, "port-injection-kit": 90 },
    demand: {
      "blower-24-92": 146,
      "blower-19-88": 118,
      "blower-19-80": 131,
      "runs-on-e10": 5,
      "runs-on-e85": 72,
    },
    because:
      "At full load the engine burns more than the high-pressure pump delivers: the rail droops and the mixture goes lean.",
  }),
  capacity({
    id: "low-pressure-fuel",
    models: boosted,
    quantity: "tank pump flow at 5 bar and 12.8 V",
    unit: "L/h",
    link: "tank-pump",
    baseFact: "lowPressureFuelLPerH",
    reservePct: 20,
    safety: true,
    supply: { "tank-pump-upgrade": { whole: 385, lessFact: "lowPressureFuelLPerH" } },
    demand: {
      "blower-24-92": 196,
      "blower-19-88": 158,
      "blower-19-80": 176,
      "blower-19-gt44": 142,
      "runs-on-e10": 6,
      "runs-on-e85": 84,
    },
    because: "The pump in the tank must keep the high-pressure pump fed on a hot day with a low battery.",
  }),
  capacity({
    id: "injection-window",
    models: boosted,
    quantity: "injector open time at 6,000 rpm",
    unit: "ms",
    link: "injection-window",
    baseFact: "injectionWindowMs",
    reservePct: 8,
    safety: true,
    supply: { "port-injection-kit": 1.5 },
    demand: {
      "blower-24-92": 3.9,
      "blower-19-88": 3.2,
      "blower-19-80": 3.5,
      "blower-19-gt44": 12.4,
      "runs-on-e85": 1.9,
    },
    because: "The fuel must be in before the spark: an injector that needs longer sprays into the flame.",
  }),
  capacity({
    id: "gearbox-torque",
    models: ["ridgewold-57", "ridgewold-57-lift", "vale-30td"],
    quantity: "gearbox torque",
    unit: "N·m",
    link: "gearbox",
    baseFact: "gearboxTorqueNm",
    reservePct: 0,
    supply: { "gearbox-calibration": 40 },
    demand: { "blower-24-92": 730, "blower-19-88": 645, "blower-19-80": 695, "tow-calibration-diesel": 535 },
    because: "The engine makes more torque than the gearbox is rated for without its calibration.",
  }),
  capacity({
    id: "clutch-torque",
    models: ["orrismere-gt44"],
    quantity: "clutch static torque",
    unit: "N·m",
    link: "clutch",
    baseFact: "clutchStaticNm",
    reservePct: 25,
    supply: { "clutch-800": { whole: 800, lessFact: "clutchStaticNm" } },
    demand: { "blower-19-gt44": 555 },
    because: "A clutch holds when its static rating is a quarter above the engine's peak torque.",
  }),
  capacity({
    id: "charge-temperature",
    models: boosted,
    quantity: "charge temperature at 25 °C ambient",
    unit: "°C",
    link: "cooler",
    baseFact: "chargeTempLimitC",
    reservePct: 0,
    safety: true,
    supply: { "charge-cooler-hot-kit": 16 },
    demand: { "blower-24-92": 64, "blower-19-88": 55, "blower-19-80": 60, "blower-19-gt44": 62 },
    because: "Past its stop line the charge takes the spark away and then knocks.",
  }),
  capacity({
    id: "belt-drive",
    models: boosted,
    quantity: "blower belt drive",
    unit: "kW",
    link: "belt-drive",
    baseFact: "beltDriveKw",
    reservePct: 15,
    supply: { "belt-8-rib": 12, "belt-10-rib": 24 },
    demand: { "blower-19-88": 20, "blower-19-80": 29, "blower-24-92": 40, "blower-19-gt44": 24 },
    because:
      "The standard belt and tensioner slip under the blower's drive power, with at least 160° of wrap or not.",
  }),
  capacity({
    id: "alternator",
    models: everyModel,
    quantity: "alternator current at hot idle",
    unit: "A",
    link: "alternator",
    baseFact: "alternatorSpareA",
    reservePct: 10,
    supply: { "alternator-upgrade": 60 },
    demand: {
      "blower-24-92": 18,
      "blower-19-88": 18,
      "blower-19-80": 18,
      "blower-19-gt44": 18,
      "driving-lamps": 12,
      "high-mount-winch": 20,
    },
    because: "At a hot idle the alternator must carry fans, pumps and lamps, or the fuel pumps slow down.",
  }),
  capacity({
    id: "payload",
    models: ["ridgewold-57", "ridgewold-57-lift", "vale-30td"],
    quantity: "payload with five people aboard",
    unit: "kg",
    link: "payload",
    baseFact: "payloadSpareKg",
    reservePct: 0,
    safety: true,
    supply: { "gvm-kit": 250 },
    demand: massesKg,
    because: "With five people and the ball load the vehicle would be over its gross mass.",
  }),
  capacity({
    id: "front-axle",
    models: ["ridgewold-57", "ridgewold-57-lift"],
    quantity: "spare load on the front axle",
    unit: "kg",
    link: "front-axle",
    baseFact: "frontAxleSpareKg",
    reservePct: 0,
    safety: true,
    supply: { "front-springs": 60, "gvm-kit": 60 },
    demand: frontAxleKg,
    because: "The front axle would carry more than it may.",
  }),
  capacity({
    id: "tow-on-grade",
    models: ["ridgewold-57", "ridgewold-57-lift", "vale-30td"],
    quantity: "trailer on a long grade at 43 °C",
    unit: "kg",
    link: "towing",
    baseFact: "towOnGradeKg",
    reservePct: 0,
    supply: { "gearbox-cooler": 700 },
    demand: { "tow-3000": 3_000, "tow-2000": 2_000, "charge-cooler": 200 },
    because:
      "On a long hot grade the gearbox oil overheats; the charge cooler in front takes some of the cooling air.",
  }),
];
