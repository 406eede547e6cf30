const day = new Intl.DateTimeFormat("en-AU", {
  weekday: "long",
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});

/** 2026-11-25 as "Wednesday 25 November 2026". */
export function dayInWords(isoDate: string): string {
  return day.format(new Date(`${isoDate}T00:00:00Z`)).replace(",", "");
}
