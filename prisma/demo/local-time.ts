import { Temporal } from "temporal-polyfill";

/** Wall-clock time of one workshop. */
export type LocalTime = {
  readonly zone: string;
  /** The calendar day of an instant. */
  readonly dayOf: (at: Date) => Temporal.PlainDate;
  /** The instant at which clocks there show that time (HH:MM) on that day. */
  readonly at: (day: Temporal.PlainDate, time: string) => Date;
};

export function localTime(zone: string): LocalTime {
  return {
    zone,
    dayOf: (at) => zoned(at, zone).toPlainDate(),
    at: (day, time) =>
      new Date(
        day.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(time) }).epochMilliseconds,
      ),
  };
}

const zoned = (at: Date, zone: string) =>
  Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(zone);
