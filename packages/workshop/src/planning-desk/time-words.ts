/** "Tue 8 Dec, 09:00" on the clock of a zone. */
export function momentWords(at: Date, timeZone: string): string {
  return `${dayWords(at, timeZone)}, ${clockWords(at, timeZone)}`;
}

/** "Tue 8 Dec" on the calendar of a zone. */
export function dayWords(at: Date, timeZone: string): string {
  const { weekday, day, month } = parts(at, timeZone);
  return `${weekday} ${day} ${month}`;
}

/** "Tue 8 Dec, 09:00 to 17:00"; the second day is said when it is another. */
export function spanWords(from: Date, to: Date, timeZone: string): string {
  const sameDay = dayWords(from, timeZone) === dayWords(to, timeZone);
  return `${momentWords(from, timeZone)} to ${sameDay ? clockWords(to, timeZone) : momentWords(to, timeZone)}`;
}

/** A stored date, which has no zone: "8 Dec 2026". */
export function dateWords(stored: Date): string {
  return new Intl.DateTimeFormat("en-AU", {
    day: "numeric",
    month: "short",
    year: "numeric",
    timeZone: "UTC",
  }).format(stored);
}

export function clockWords(at: Date, timeZone: string): string {
  const { hour, minute } = parts(at, timeZone);
  return `${hour}:${minute}`;
}

type Part = "weekday" | "day" | "month" | "hour" | "minute";

function parts(at: Date, timeZone: string): Readonly<Record<Part, string>> {
  const found: Record<Part, string> = { weekday: "", day: "", month: "", hour: "", minute: "" };
  const format = new Intl.DateTimeFormat("en-AU", {
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
  });
  for (const { type, value } of format.formatToParts(at)) {
    if (type in found) found[type as Part] = value; // `in` has just said that it is one of them.
  }
  return found;
}
