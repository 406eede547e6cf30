import { momentText } from "./moment-text";

interface MomentProps {
  readonly at: Date;
  readonly timeZone: string;
  readonly form?: "day" | "time" | "day-and-time";
}

/** An instant in the workshop's time zone. */
export function Moment({ at, timeZone, form = "day-and-time" }: MomentProps) {
  return <time dateTime={at.toISOString()}>{momentText(at, timeZone, form)}</time>;
}
