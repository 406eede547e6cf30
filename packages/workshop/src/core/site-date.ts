import { Temporal } from "temporal-polyfill";

/** The calendar date at an instant, as the clock on the wall of a time zone shows it: 2026-12-18. */
export function dateInZone(instant: Date, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(instant.getTime())
    .toZonedDateTimeISO(timeZone)
    .toPlainDate()
    .toString();
}

/** A date some days later. */
export function addDays(isoDate: string, days: number): string {
  return Temporal.PlainDate.from(isoDate).add({ days }).toString();
}

/** Whole days from one date to another; negative when the other is earlier. */
export function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to)).days;
}

/** The instants at which a date begins and ends on the clock of a time zone. */
export function dayInZone(isoDate: string, timeZone: string): { readonly start: Date; readonly end: Date } {
  const date = Temporal.PlainDate.from(isoDate);
  const startOf = (day: Temporal.PlainDate) => new Date(day.toZonedDateTime(timeZone).epochMilliseconds);
  return { start: startOf(date), end: startOf(date.add({ days: 1 })) };
}

/** A stored date as text. The database's dates arrive as midnight UTC. */
export function isoDateOf(stored: Date): string {
  return stored.toISOString().slice(0, 10);
}

/** A date as the database stores it. */
export function storedDate(isoDate: string): Date {
  return new Date(`${isoDate}T00:00:00.000Z`);
}
