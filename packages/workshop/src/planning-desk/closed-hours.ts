import { Temporal } from "temporal-polyfill";
import { spanWords } from "./time-words";
import type { WorkBlock } from "./work-block";

/** Usual hours until each site keeps a calendar of its own. Common practice, no source. */
export const usualHours = { opens: "07:00", closes: "18:00", lastWeekday: 5 } as const;

/** Says which blocks begin or end while the workshop is usually closed. It warns; it never refuses. */
export function closedHoursWarnings(blocks: readonly WorkBlock[], timeZone: string): readonly string[] {
  return blocks
    .filter(({ startsAt, endsAt }) => isClosed(startsAt, timeZone) || isClosed(endsAt, timeZone))
    .map(
      ({ resource, startsAt, endsAt }) =>
        `${resource.name}, ${spanWords(startsAt, endsAt, timeZone)}, begins or ends outside the usual hours (${usualHours.opens} to ${usualHours.closes}, Monday to Friday).`,
    );
}

function isClosed(at: Date, timeZone: string): boolean {
  const local = Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(timeZone);
  const clock = local.toPlainTime().toString({ smallestUnit: "minute" });
  return local.dayOfWeek > usualHours.lastWeekday || clock < usualHours.opens || clock > usualHours.closes;
}
