/** An instant on the clock of a zone, as a time field holds it: `2026-12-08T09:00`. */
export function localText(at: Date, timeZone: string): string {
  const parts = new Intl.DateTimeFormat("en-AU", {
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
  }).formatToParts(at);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((each) => each.type === type)?.value ?? "";
  return `${part("year")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}`;
}

/** "Tue 8 Dec, 09:00 to 17:00" on the clock of a zone. */
export function spanText(from: Date, to: Date, timeZone: string): string {
  const day = new Intl.DateTimeFormat("en-AU", {
    weekday: "short",
    day: "numeric",
    month: "short",
    timeZone,
  });
  const clock = new Intl.DateTimeFormat("en-AU", {
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
    timeZone,
  });
  const start = `${day.format(from)}, ${clock.format(from)}`;
  const isOneDay = day.format(from) === day.format(to);
  return `${start} to ${isOneDay ? clock.format(to) : `${day.format(to)}, ${clock.format(to)}`}`;
}

/** "Tue 8 Dec" of a calendar date, which has no zone. */
export function dayText(date: string): string {
  return new Intl.DateTimeFormat("en-AU", {
    weekday: "short",
    day: "numeric",
    month: "short",
    timeZone: "UTC",
  }).format(new Date(`${date}T00:00:00Z`));
}
