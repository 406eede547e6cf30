import { momentText } from "@/design/moment-text";

/** A date without a time, as written by ISO 8601, in words. */
export function dayText(isoDate: string): string {
  return momentText(new Date(`${isoDate}T00:00:00Z`), "UTC", "day");
}
