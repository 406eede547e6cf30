import type { LocalTime } from "../local-time";
import type { Stretch } from "../work-rows";

/** The workshop is open on weekdays at these times. */
const SPANS = [
  ["07:30", "12:00"],
  ["12:30", "16:00"],
] as const;
const MINUTE_MS = 60_000;

/** Open minutes counted one after another, so that an hour of work is 60 wherever a night falls. */
export type WorkingTime = {
  /** The first open minute at or after an instant. */
  readonly minuteAt: (at: Date) => number;
  /** All open minutes there are. */
  readonly minutes: number;
  /** The stretches of wall-clock time that [from, to) covers, in order. */
  readonly stretches: (from: number, to: number) => readonly Stretch[];
};

type Span = { readonly first: number; readonly start: number; readonly minutes: number };

/** Open time of the given number of days from a day on. */
export function workingTime(local: LocalTime, from: Date, to: Date): WorkingTime {
  const spans: Span[] = [];
  let minutes = 0;
  const last = local.dayOf(to);
  for (let day = local.dayOf(from); day.until(last).days >= 0; day = day.add({ days: 1 })) {
    if (day.dayOfWeek > 5) continue;
    for (const [opens, closes] of SPANS) {
      const start = local.at(day, opens).getTime();
      const length = (local.at(day, closes).getTime() - start) / MINUTE_MS;
      spans.push({ first: minutes, start, minutes: length });
      minutes += length;
    }
  }
  return {
    minutes,
    minuteAt(at) {
      const span = spans.find((each) => each.start + each.minutes * MINUTE_MS > at.getTime());
      if (!span) return minutes;
      return span.first + Math.max(0, Math.ceil((at.getTime() - span.start) / MINUTE_MS));
    },
    stretches(start, end) {
      return spans
        .filter((span) => span.first < end && span.first + span.minutes > start)
        .map((span) => ({
          from: new Date(span.start + Math.max(0, start - span.first) * MINUTE_MS),
          to: new Date(span.start + Math.min(span.minutes, end - span.first) * MINUTE_MS),
        }));
    },
  };
}

/** First and last instant of stretches that follow one another. */
export function whole(stretches: readonly Stretch[]): Stretch {
  const [first, last] = [stretches[0], stretches.at(-1)];
  if (!first || !last) throw new Error("no working time there");
  return { from: first.from, to: last.to };
}
