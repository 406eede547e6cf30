type Form = "day" | "time" | "day-and-time";

const FORMS: Record<Form, Intl.DateTimeFormatOptions> = {
  day: { weekday: "short", day: "numeric", month: "short", year: "numeric" },
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  "day-and-time": {
    weekday: "short",
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  },
};

/** An instant as the workshop's own clock shows it. */
export function momentText(instant: Date, timeZone: string, form: Form = "day-and-time"): string {
  return new Intl.DateTimeFormat("en-AU", { ...FORMS[form], timeZone }).format(instant);
}
