const form = new Intl.DateTimeFormat("en-AU", {
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});

/** A date as staff and customers read it: 2026-12-18 is "Fri, 18 Dec 2026". */
export function dayInWords(isoDate: string): string {
  return form.format(new Date(`${isoDate}T00:00:00Z`));
}
