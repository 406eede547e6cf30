import { addDays, dateInZone, daysBetween } from "../core/site-date";

const MOST_DAYS = 366;

/** Until when a quote made now holds, when nobody says otherwise. */
export function usualValidUntil(
  now: Date,
  site: { readonly timeZone: string; readonly quoteValidDays: number },
) {
  return addDays(dateInZone(now, site.timeZone), site.quoteValidDays);
}

/** Which refusal a last day of validity meets, or null. */
export function validUntilRefusal(isoDate: string, now: Date, timeZone: string) {
  const days = daysBetween(dateInZone(now, timeZone), isoDate);
  if (days < 0) return "date-past" as const;
  return days > MOST_DAYS ? ("date-too-far" as const) : null;
}
