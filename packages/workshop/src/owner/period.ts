import { Temporal } from "temporal-polyfill";
import { z } from "zod";
import { dateInZone, dayInZone } from "../core/site-date";

/** How far back the owner looks; jobs count by when they were handed over. */
export const ownerPeriods = ["90-days", "12-months", "all"] as const;
export type OwnerPeriod = (typeof ownerPeriods)[number];

export const ownerPeriod = z.enum(ownerPeriods, "Choose the last 90 days, the last 12 months, or all.");

const lengths = { "90-days": { days: 90 }, "12-months": { months: 12 } } as const;

/** When a period begins: at 00:00 of its first day on the site's clock; for "all", before anything was. */
export function periodStart(period: OwnerPeriod, now: Date, timeZone: string): Date {
  if (period === "all") return new Date(0);
  const first = Temporal.PlainDate.from(dateInZone(now, timeZone)).subtract(lengths[period]);
  return dayInZone(first.toString(), timeZone).start;
}
