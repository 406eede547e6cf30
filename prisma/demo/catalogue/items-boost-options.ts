import { boosted, everyModel, item, ridgewolds, towing } from "./item";
import type { CatalogueItem } from "./types";

/*
 * Pulleys, cooling and intake. A pulley of its own makes another duty point of the blower it belongs to: it asks of
 * air, fuel and belt only the difference. Cost and sell: common practice, no source.
 */
const pulley = (
  id: string,
  code: string,
  name: string,
  note: string,
  fits: CatalogueItem["fits"] = ridgewolds,
) =>
  item("air", "part", id, code, "Pellavane", name, {
    cost: 210,
    sell: 340,
    leadDays: 5,
    massKg: 0,
    returnable: false,
    fits,
    operations: ["change-blower-pulley"],
    note,
  });

const pulleys: readonly CatalogueItem[] = [
  pulley(
    "pulley-24-98",
    "PV-PL98",
    "Blower pulley 98 mm, milder, for the 2.4",
    "In place of the 92 mm one: about 52 kPa (7.6 psi) at 6,000 rpm, easier on fuel, belt and heat.",
  ),
  pulley(
    "pulley-24-86",
    "PV-PL86",
    "Blower pulley 86 mm, stronger, for the 2.4",
    "In place of the 92 mm one: about 77 kPa (11.2 psi) at 6,000 rpm. Brings power only on E85.",
  ),
  pulley(
    "pulley-19-84",
    "PV-PL84",
    "Blower pulley 84 mm for the 1.9 kit with 88 mm",
    "Between the two kits: about 39 kPa (5.7 psi) at 6,000 rpm.",
  ),
  pulley(
    "pulley-gt44-96",
    "PV-PL96",
    "Blower pulley 96 mm, milder, for the GT 4.4",
    "In place of the 88 mm one: about 38 kPa (5.5 psi) at 6,000 rpm.",
    ["orrismere-gt44"],
  ),
];

const drive: readonly CatalogueItem[] = [
  item("air", "part", "belt-wrap-idler", "PV-IDL", "Pellavane", "Belt wrap idler", {
    cost: 95,
    sell: 165,
    leadDays: 4,
    massKg: 1,
    operations: ["fit-wrap-idler"],
    note: "At least 190° of wrap on the blower pulley.",
  }),
  item("air", "part", "blower-oil", "PV-OIL", "Pellavane", "Blower gear oil, 0.2 L", {
    cost: 18,
    sell: 38,
    leadDays: 2,
    returnable: false,
    oneUse: true,
    fits: boosted,
    note: "Drained with the pulley off; the old oil does not go back.",
  }),
];

const cooling: readonly CatalogueItem[] = [
  item("air", "part", "radiator-57", "QN-RAD57", "Quoinard", "Radiator, 48 mm core", {
    cost: 690,
    sell: 1_020,
    leadDays: 8,
    massKg: 5,
    operations: ["fit-radiator"],
  }),
  item("air", "part", "radiator-30td", "QN-RAD3", "Quoinard", "Radiator for the 3.0 TD, 42 mm core", {
    cost: 560,
    sell: 850,
    leadDays: 8,
    massKg: 4,
    fits: ["vale-30td"],
    operations: ["fit-radiator"],
  }),
  item("air", "kit", "radiator-fans", "QN-FAN2", "Quoinard", "Twin electric radiator fans", {
    cost: 380,
    sell: 590,
    leadDays: 6,
    massKg: 3,
    operations: ["fit-radiator-fans"],
    note: "Takes the place of the standard fan.",
  }),
  item("air", "kit", "oil-cooler-gt44", "QN-OC44", "Quoinard", "Engine oil cooler for the GT 4.4", {
    cost: 520,
    sell: 790,
    leadDays: 9,
    massKg: 4,
    fits: ["orrismere-gt44"],
    operations: ["fit-oil-cooler"],
    note: "With a thermostat, so that the oil still warms up.",
  }),
  item("air", "consumable", "coolant-fill", "SD-COOL", "workshop", "Coolant, full change", {
    cost: 45,
    sell: 95,
    leadDays: 1,
    returnable: false,
    fits: everyModel,
    operations: ["change-coolant"],
  }),
  item("air", "kit", "radiator-hoses", "QN-HS", "Quoinard", "Radiator hoses and clamps", {
    cost: 70,
    sell: 130,
    leadDays: 3,
    oneUse: true,
    fits: [...towing],
  }),
];

const intake: readonly CatalogueItem[] = [
  item("air", "part", "raised-intake", "OS-SNK", "Ostrel", "Raised air intake", {
    cost: 310,
    sell: 520,
    leadDays: 6,
    massKg: 4,
    fits: [...towing, "bramlet-trail-20"],
    operations: ["fit-raised-intake"],
    note: "Sealed to the airbox and smoke-tested; it is no licence to wade.",
  }),
  item("air", "part", "dry-panel-filter", "PV-FLT", "Pellavane", "Dry panel filter", {
    cost: 48,
    sell: 89,
    leadDays: 2,
    fits: everyModel,
    operations: ["fit-panel-filter"],
  }),
  item("air", "kit", "oil-separator", "QN-SEP", "Quoinard", "Crankcase oil separator, closed", {
    cost: 190,
    sell: 320,
    leadDays: 5,
    massKg: 2,
    fits: [...boosted, "vale-30td"],
    operations: ["fit-oil-separator"],
    note: "Vents back to the intake: nothing goes to the open air.",
  }),
  item("air", "kit", "intake-gaskets", "SD-IG", "workshop", "Intake manifold gaskets", {
    cost: 38,
    sell: 75,
    leadDays: 3,
    oneUse: true,
    returnable: false,
  }),
];

export const boostOptionItems: readonly CatalogueItem[] = [...pulleys, ...drive, ...cooling, ...intake];
