import { Temporal } from "temporal-polyfill";

export type LocalTimeProblem = "not-a-time" | "does-not-exist" | "is-double";

export type TypedTime =
  | { readonly ok: true; readonly at: Date }
  | { readonly ok: false; readonly problem: LocalTimeProblem };

/**
 * The instant that a time typed at the workshop means: `2026-12-08T09:00` on the clock of its zone.
 *
 * On the night the clocks change, one hour is left out and another is shown twice. Neither is guessed.
 */
export function instantOfLocal(typed: string, timeZone: string): TypedTime {
  const local = plainDateTime(typed);
  if (!local) return { ok: false, problem: "not-a-time" };
  const earlier = local.toZonedDateTime(timeZone, { disambiguation: "earlier" });
  const later = local.toZonedDateTime(timeZone, { disambiguation: "later" });
  if (earlier.epochMilliseconds === later.epochMilliseconds)
    return { ok: true, at: new Date(earlier.epochMilliseconds) };
  // In the hour left out, both readings fall beside the typed time; in the double hour, both show it.
  const shown = earlier.toPlainDateTime().equals(local);
  return { ok: false, problem: shown ? "is-double" : "does-not-exist" };
}

function plainDateTime(typed: string): Temporal.PlainDateTime | null {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(typed)) return null;
  try {
    return Temporal.PlainDateTime.from(typed, { overflow: "reject" });
  } catch {
    return null;
  }
}

/** The clock of a zone at an instant, in the form a time is typed: `2026-12-08T09:00`. */
export function localOfInstant(at: Date, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(at.getTime())
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });
}
