import type { ActingPerson } from "../core/actor";
import { dateInZone } from "../core/site-date";

type Entry = { readonly personId: string; readonly stoppedAt: Date | null };

/**
 * A manager sets any clock right. A person sets their own on the day that it stopped, or while it runs on: what
 * was forgotten yesterday is found this morning. After that the figures may have been read.
 */
export function mayCorrectClock(
  entry: Entry,
  person: Pick<ActingPerson, "id" | "roles">,
  { now, timeZone }: { readonly now: Date; readonly timeZone: string },
): boolean {
  if (person.roles.includes("manager")) return true;
  if (entry.personId !== person.id || !person.roles.includes("technician")) return false;
  const today = dateInZone(now, timeZone);
  return entry.stoppedAt === null || dateInZone(entry.stoppedAt, timeZone) === today;
}
