import { everyModel, item, towing } from "./item";
import type { CatalogueItem } from "./types";

/* Brakes, and more of towing. Cost and sell: common practice, no source. */
const brakes: readonly CatalogueItem[] = [
  item("brakes", "kit", "brake-kit-57", "MW-BK57", "Marlowick", "Front brake kit, 370 mm discs", {
    cost: 2_650,
    sell: 3_480,
    leadDays: 14,
    massKg: 9,
    serialised: true,
    operations: ["fit-front-brakes"],
    note: "Needs 18-inch wheels.",
  }),
  item(
    "brakes",
    "kit",
    "brake-kit-gt44",
    "MW-BK44",
    "Marlowick",
    "Front brake kit for the GT 4.4, 355 mm discs",
    {
      cost: 2_280,
      sell: 2_990,
      leadDays: 14,
      massKg: 4,
      serialised: true,
      fits: ["orrismere-gt44"],
      operations: ["fit-front-brakes"],
    },
  ),
  item("brakes", "kit", "brake-pads-touring", "MW-PT", "Marlowick", "Brake pads for towing, front and rear", {
    cost: 240,
    sell: 390,
    leadDays: 3,
    fits: towing,
    operations: ["fit-brake-pads"],
  }),
  item("brakes", "kit", "brake-pads-track-gt44", "MW-PTR", "Marlowick", "Brake pads for track days", {
    cost: 390,
    sell: 580,
    leadDays: 6,
    fits: ["orrismere-gt44"],
    operations: ["fit-brake-pads"],
    note: "Cold they bite less and squeal: changed back for the road where that matters.",
  }),
  item("brakes", "kit", "brake-pads-standard", "MW-PS", "Marlowick", "Brake pads, as standard", {
    cost: 130,
    sell: 220,
    leadDays: 2,
    fits: everyModel,
    operations: ["fit-brake-pads"],
  }),
  item(
    "brakes",
    "kit",
    "brake-pads-bramlet",
    "MW-PB",
    "Marlowick",
    "Brake pads and shoes for the Trail 2.0",
    {
      cost: 120,
      sell: 210,
      leadDays: 3,
      fits: ["bramlet-trail-20"],
      operations: ["fit-brake-pads"],
    },
  ),
  item("brakes", "kit", "brake-discs-front", "MW-DF", "Marlowick", "Front brake discs, as standard", {
    cost: 310,
    sell: 460,
    leadDays: 3,
    fits: everyModel,
    operations: ["fit-brake-discs"],
  }),
  item("brakes", "kit", "brake-hoses-long", "MW-HL", "Marlowick", "Brake hoses, 60 mm longer", {
    cost: 145,
    sell: 240,
    leadDays: 5,
    fits: [...towing, "bramlet-trail-20"],
    operations: ["fit-brake-hoses"],
    note: "Marked as tested; for a raised vehicle.",
  }),
  item("brakes", "kit", "brake-hoses-gt44", "MW-H44", "Marlowick", "Braided brake hoses for the GT 4.4", {
    cost: 160,
    sell: 265,
    leadDays: 5,
    fits: ["orrismere-gt44"],
    operations: ["fit-brake-hoses"],
    note: "Marked as tested for road use.",
  }),
  item("brakes", "kit", "brake-seals", "MW-SW", "Marlowick", "Brake sealing washers and caliper bolts", {
    cost: 18,
    sell: 42,
    leadDays: 2,
    returnable: false,
    oneUse: true,
    fits: everyModel,
  }),
  item("brakes", "consumable", "brake-fluid", "MW-FL", "Marlowick", "Brake fluid, full change", {
    cost: 32,
    sell: 68,
    leadDays: 1,
    returnable: false,
    fits: everyModel,
    operations: ["change-brake-fluid"],
    note: "Dry boiling point at least 260 °C.",
  }),
];

const duties: readonly CatalogueItem[] = [
  item("towing", "duty", "tow-3500", "SD-T35", "workshop", "Tows up to 3,500 kg, 350 kg on the ball", {
    cost: 0,
    sell: 0,
    massKg: 350,
    fits: ["ridgewold-57", "vale-30td"],
  }),
  item("towing", "duty", "tow-1000", "SD-T10", "workshop", "Tows up to 1,000 kg, 50 kg on the ball", {
    cost: 0,
    sell: 0,
    massKg: 50,
    fits: ["orrismere-gt44", "bramlet-trail-20"],
  }),
  item(
    "towing",
    "duty",
    "tow-750",
    "SD-T07",
    "workshop",
    "Tows up to 750 kg without brakes, 60 kg on the ball",
    {
      cost: 0,
      sell: 0,
      massKg: 60,
      fits: [...towing, "orrismere-gt44"],
    },
  ),
  item("towing", "duty", "carries-250", "SD-L250", "workshop", "Carries 250 kg in the tray", {
    cost: 0,
    sell: 0,
    massKg: 250,
    fits: ["vale-30td"],
  }),
  item("towing", "duty", "carries-80", "SD-L80", "workshop", "Carries 80 kg of luggage", {
    cost: 0,
    sell: 0,
    massKg: 80,
    fits: ["orrismere-gt44"],
  }),
];

const bar = (
  id: string,
  code: string,
  name: string,
  cost: number,
  sell: number,
  massKg: number,
  fits: CatalogueItem["fits"],
) =>
  item("towing", "kit", id, code, "Marlowick", name, {
    cost,
    sell,
    leadDays: 7,
    massKg,
    fits,
    operations: ["fit-tow-bar"],
    note: "Its plate says trailer and ball load, and its maker's list has this model.",
  });

const gear: readonly CatalogueItem[] = [
  bar("tow-bar-3500", "MW-TB35", "Tow bar rated 3,500 kg, 350 kg on the ball", 520, 790, 8, towing),
  bar("tow-bar-gt44", "MW-TB44", "Tow bar for the GT 4.4, 1,600 kg", 480, 740, 22, ["orrismere-gt44"]),
  bar("tow-bar-bramlet", "MW-TB20", "Tow bar for the Trail 2.0, 1,200 kg", 310, 490, 12, [
    "bramlet-trail-20",
  ]),
  item("towing", "kit", "weight-distribution-hitch", "MW-WDH", "Marlowick", "Weight-distribution hitch", {
    cost: 540,
    sell: 820,
    leadDays: 6,
    massKg: 0,
    fits: towing,
    operations: ["set-up-hitch"],
    note: "Carried by the trailer. It lowers no mass and raises no limit.",
  }),
  item("towing", "part", "seven-pin-socket", "MW-7", "Marlowick", "7-pin flat trailer socket", {
    cost: 48,
    sell: 95,
    leadDays: 1,
    fits: everyModel,
    operations: ["fit-trailer-socket"],
  }),
  item("towing", "part", "towing-mirrors", "MW-MIR", "Marlowick", "Towing mirrors, pair", {
    cost: 180,
    sell: 290,
    leadDays: 4,
    massKg: 3,
    fits: towing,
    operations: ["fit-towing-mirrors"],
  }),
  item("towing", "part", "van-camera", "MW-CAM", "Marlowick", "Trailer camera with display", {
    cost: 260,
    sell: 420,
    leadDays: 5,
    massKg: 1,
    fits: towing,
    operations: ["fit-van-camera"],
  }),
  item(
    "towing",
    "operation",
    "breakaway-check",
    "SD-BRK",
    "workshop",
    "Check of the trailer's breakaway system",
    { cost: 0, sell: 0, fits: towing, operations: ["check-breakaway"], note: "Bring the trailer." },
  ),
];

export const brakeTowItems: readonly CatalogueItem[] = [...brakes, ...duties, ...gear];
