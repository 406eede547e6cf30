import type { ModelId } from "../catalogue/types";
import { addCustomer, addVehicle, type OwnedVehicle } from "../customer-rows";
import type { Scene } from "../scene";
import type { SeededRandom } from "../seeded-random";

/** Somebody who comes at some time, with one vehicle. */
export type Member = {
  readonly name: string;
  readonly email: string;
  readonly phone: string;
  readonly model: ModelId;
  /** What the vehicle has had done already. */
  readonly had: Set<string>;
  seen: boolean;
};

const CUSTOMERS = 250;

/** Ordinary names; with an initial they mean nobody. */
const surnames =
  "Abbot Ackerly Alder Amberley Ashdown Baring Barlow Beckwith Bellamy Birkett Blackwood Boland Brigg Burnside Calder Carrow Cheever Colbeck Corrigan Cressey Dalby Darrow Denholm Draycott Dunmore Eastly Elphin Fairlie Farrow Fenwick Galt Garrick Glanville Greer Hallam Harbin Hartnell Haxby Hollis Ingram Iverach Jarrow Keating Kelso Kirkby Lachlan Larkin Leighton Lorne Mabry Maddern Marsden Merrin Nairn Norcott Oakley Ormond Pascoe Penrose Quill Radley Renwick Rushton Selwyn Shaw Standish Tarrant Thorne Tolland Upton Vance Wardle Wexley Winslow Yarrow Yule".split(
    " ",
  );

const models: readonly (readonly [ModelId, number])[] = [
  ["ridgewold-57", 0.56],
  ["ridgewold-57-lift", 0.06],
  ["vale-30td", 0.24],
  ["orrismere-gt44", 0.07],
  ["bramlet-trail-20", 0.07],
];

export function customerPool(random: SeededRandom): readonly Member[] {
  const names = new Set<string>();
  while (names.size < CUSTOMERS) {
    names.add(`${random.pick([..."ABCDEGHJKLMNPRSTVW"])}. ${random.pick(surnames)}`);
  }
  return [...names].map((name, index) => ({
    name,
    email: `${name.replace(". ", ".").toLowerCase()}@customers.example`,
    // The block set aside for fiction runs from 5550 0000.
    phone: `08 5550 ${String(1_000 + index * 7).padStart(4, "0")}`,
    model: pickModel(random),
    had: new Set<string>(),
    seen: false,
  }));
}

function pickModel(random: SeededRandom): ModelId {
  let left = random.next();
  for (const [model, share] of models) {
    left -= share;
    if (left < 0) return model;
  }
  return "ridgewold-57";
}

const usesOf: Readonly<Record<ModelId, readonly ("towing" | "touring" | "street" | "track")[]>> = {
  "ridgewold-57": ["towing", "touring"],
  "ridgewold-57-lift": ["touring"],
  "vale-30td": ["towing"],
  "orrismere-gt44": ["street", "track"],
  "bramlet-trail-20": ["touring"],
};

/** Writes a member's rows the first time they come. */
export function memberRows(scene: Scene): (member: Member, at: Date) => OwnedVehicle {
  const known = new Map<Member, OwnedVehicle>();
  const { workshop, catalogue } = scene;
  return (member, at) => {
    const before = known.get(member);
    if (before) return before;
    const { name, email, phone, model } = member;
    const customer = addCustomer(workshop, { name, email, phone, at });
    const vehicle = addVehicle(workshop, catalogue, {
      customer,
      model,
      odometerKm: workshop.random.integer(40, 1_400) * 100,
      uses: usesOf[model],
      at,
    });
    known.set(member, vehicle);
    return vehicle;
  };
}
