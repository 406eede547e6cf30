import type { ModelId } from "../catalogue/types";
import { addCustomer, addVehicle } from "../customer-rows";
import {
  addAcceptance,
  addBuild,
  addPayment,
  addQuote,
  type DemoBuild,
  type DemoQuote,
  type WantedVersion,
} from "../quote-rows";
import type { Scene } from "../scene";

/** Clock times around the anchor: 0 is its day, −1 the day before. */
export type LiveDay = Scene & {
  readonly at: (days: number, time: string) => Date;
  /** The calendar day, as the database keeps dates. */
  readonly date: (days: number) => string;
};

export function liveDay(scene: Scene): LiveDay {
  const { local, anchor } = scene.workshop;
  const today = local.dayOf(anchor);
  return {
    ...scene,
    at: (days, time) => local.at(today.add({ days }), time),
    date: (days) => today.add({ days }).toString(),
  };
}

export type Enquiry = {
  readonly name: string;
  readonly phone: string;
  readonly model: ModelId;
  readonly plate: string;
  readonly odometerKm: number;
  readonly uses: readonly ("towing" | "touring" | "street" | "track")[];
  readonly goal: string;
  readonly packageCode: string | null;
  readonly itemCodes: readonly string[];
  readonly at: Date;
  readonly wantedBy?: string;
};

/** A customer, their vehicle and what they want. */
export function addEnquiry(day: LiveDay, enquiry: Enquiry): DemoBuild {
  const { workshop, catalogue } = day;
  const { name, phone, at, model, plate, odometerKm, uses, ...build } = enquiry;
  const surname = name.split(" ").at(-1)?.toLowerCase() ?? name;
  const customer = addCustomer(workshop, { name, phone, email: `${surname}@customers.example`, at });
  const vehicle = addVehicle(workshop, catalogue, { customer, model, plate, odometerKm, uses, at });
  return addBuild(workshop, catalogue, { ...build, vehicle, at });
}

export type AcceptedDates = {
  readonly issued: Date;
  readonly accepted: Date;
  readonly depositPaid?: Date;
  readonly allPaid?: Date;
};

/** A quote that was accepted, with its deposit where that has come in. */
export function addAcceptedQuote(
  day: LiveDay,
  build: DemoBuild,
  dates: AcceptedDates,
  more: Partial<WantedVersion> = {},
): DemoQuote {
  const { workshop, staff } = day;
  const desk = staff.person("noor");
  const quote = addQuote(workshop, build, [
    { status: "accepted", at: dates.issued, issuedById: desk, ...more },
  ]);
  addAcceptance(workshop, quote, dates.accepted);
  const { depositMinor, grossMinor } = quote.priced;
  if (dates.depositPaid) {
    addPayment(workshop, quote, {
      kind: "deposit",
      amountMinor: depositMinor,
      at: dates.depositPaid,
      recordedById: desk,
    });
  }
  if (dates.allPaid) {
    addPayment(workshop, quote, {
      kind: "balance",
      amountMinor: grossMinor - depositMinor,
      at: dates.allPaid,
      recordedById: desk,
    });
  }
  return quote;
}
