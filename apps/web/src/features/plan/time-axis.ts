/** A day on the plan, from opening to closing. */
export interface AxisDay {
  readonly date: string;
  readonly opens: Date;
  readonly closes: Date;
  readonly isClosed: boolean;
}

interface Stretch {
  readonly startsAt: Date;
  readonly endsAt: Date;
}

export interface AxisSegment {
  readonly date: string;
  readonly isClosed: boolean;
  readonly from: number;
  readonly to: number;
  /** Where it lies along the axis, from 0 to 1. */
  readonly left: number;
  readonly width: number;
}

export interface TimeAxis {
  readonly segments: readonly AxisSegment[];
  /** Full hours that are labelled. */
  readonly hours: readonly { readonly at: Date; readonly left: number }[];
}

const HOUR = 3_600_000;
/** No working day reaches further beyond its usual hours than this; a vehicle left overnight is cut at the day's edge. */
const MOST_BEYOND = 5 * HOUR;

/**
 * The time that a plan shows: working hours of its days put side by side, the nights left out, each day
 * stretched over whatever is booked early or late in it.
 */
export function timeAxis(days: readonly AxisDay[], stretches: readonly Stretch[]): TimeAxis {
  const spans = days.map((day) => spanOf(day, stretches));
  const total = spans.reduce((sum, { from, to }) => sum + (to - from), 0);
  let before = 0;
  const segments = spans.map((span) => {
    const segment = { ...span, left: before / total, width: (span.to - span.from) / total };
    before += span.to - span.from;
    return segment;
  });
  return { segments, hours: hoursOf(segments) };
}

function spanOf({ date, opens, closes, isClosed }: AxisDay, stretches: readonly Stretch[]) {
  let [from, to] = [opens.getTime(), closes.getTime()];
  const [first, last] = [from - MOST_BEYOND, to + MOST_BEYOND];
  for (const { startsAt, endsAt } of stretches) {
    for (const edge of [startsAt.getTime(), endsAt.getTime()]) {
      if (edge >= first && edge < from) from = from - Math.ceil((from - edge) / HOUR) * HOUR;
      if (edge > to && edge <= last) to = to + Math.ceil((edge - to) / HOUR) * HOUR;
    }
  }
  return { date, isClosed, from, to };
}

function hoursOf(segments: readonly AxisSegment[]): TimeAxis["hours"] {
  const every = segments.length > 1 ? 6 : 1;
  return segments.flatMap((segment) => {
    const hours: { at: Date; left: number }[] = [];
    for (let at = segment.from; at < segment.to; at += every * HOUR)
      hours.push({ at: new Date(at), left: positionIn(segment, at) });
    return hours;
  });
}

/** Where an instant lies along the axis; null when it falls into a night that is left out. */
export function positionOf({ segments }: TimeAxis, at: number): number | null {
  const segment = segments.find(({ from, to }) => at >= from && at <= to);
  return segment ? positionIn(segment, at) : null;
}

/** Where a stretch lies: cut at the edges of what is shown. Null when none of it shows. */
export function extentOf(
  axis: TimeAxis,
  stretch: Stretch,
): { readonly left: number; readonly width: number } | null {
  const [start, end] = [stretch.startsAt.getTime(), stretch.endsAt.getTime()];
  const shown = axis.segments.filter(({ from, to }) => start < to && end > from);
  const [first, last] = [shown[0], shown.at(-1)];
  if (!first || !last) return null;
  const left = positionIn(first, Math.max(start, first.from));
  const right = positionIn(last, Math.min(end, last.to));
  return { left, width: right - left };
}

/** The instant at a place along the axis, on the half hour before it. */
export function instantAt({ segments }: TimeAxis, place: number): Date | null {
  const segment = segments.find(({ left, width }) => place >= left && place <= left + width);
  if (!segment) return null;
  const at = segment.from + ((place - segment.left) / segment.width) * (segment.to - segment.from);
  return new Date(segment.from + Math.floor((at - segment.from) / (HOUR / 2)) * (HOUR / 2));
}

function positionIn(segment: AxisSegment, at: number): number {
  return segment.left + ((at - segment.from) / (segment.to - segment.from)) * segment.width;
}
