import type { Site } from "../core/site";

/** Something owed to a customer, as a sentence with the one action that moves it on. */
export type Owed = {
  readonly kind:
    | "fault"
    | "question"
    | "catalogue-held"
    | "lapses-now"
    | "deposit"
    | "hand-over-blocked"
    | "unpaid"
    | "ready"
    | "lapsed"
    | "lapses-soon"
    | "waiting";
  readonly sentence: string;
  /** Sorts within a kind: the date or instant it goes back to, as ISO 8601. */
  readonly since: string;
  readonly action: {
    readonly label: string;
    readonly place: "quote" | "job" | "gate" | "hand-over" | "catalogue";
    readonly id: string;
  };
};

export type Moment = { readonly now: Date; readonly today: string; readonly site: Site };

const order: readonly Owed["kind"][] = [
  "fault",
  "question",
  "catalogue-held",
  "lapses-now",
  "hand-over-blocked",
  "deposit",
  "unpaid",
  "ready",
  "waiting",
  "lapses-soon",
  "lapsed",
];

/** Smaller is more urgent: standing work first, then what runs out today or tomorrow. */
export function urgency({ kind }: Owed): number {
  return order.indexOf(kind);
}

/** "A. Okafor's Ridgewold 5.7 (1AB 2CD)". */
export function vehicleOf(row: {
  readonly customer: { readonly name: string };
  readonly vehicle: { readonly plate: string; readonly vehicleModel: { readonly name: string } };
}): string {
  const plate = row.vehicle.plate === "" ? "" : ` (${row.vehicle.plate})`;
  return `${row.customer.name}’s ${row.vehicle.vehicleModel.name}${plate}`;
}

/** "today", "tomorrow", "in 3 days", "yesterday", "4 days ago". */
export function inDays(days: number): string {
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

/** 2026-12-18 as "18 December". */
export function dayWords(isoDate: string): string {
  return new Intl.DateTimeFormat("en-AU", { day: "numeric", month: "long", timeZone: "UTC" }).format(
    new Date(`${isoDate}T00:00:00Z`),
  );
}

/** An instant on the clock of the site: "09:10" today, "24 November 09:10" on another day. */
export function clockWords(instant: Date, timeZone: string, isToday: boolean): string {
  return new Intl.DateTimeFormat("en-AU", {
    ...(isToday ? {} : { day: "numeric", month: "long" }),
    hour: "2-digit",
    minute: "2-digit",
    hour12: false,
    timeZone,
  })
    .format(instant)
    .replace(" at ", ", ");
}
