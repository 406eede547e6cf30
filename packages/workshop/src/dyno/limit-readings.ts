import {
  type AbortLimit,
  abortLimits,
  type LimitedEngine,
  type LimitReading,
  worstReading,
} from "./abort-limits";
import type { MeasuredEngine } from "./measured-engine";
import { meanPoints } from "./session-figures";
import type { SessionRecord } from "./session-record";

/** A limit, and the worst that the runs that count came to; null where the log does not carry the channel. */
export type LimitedReading = { readonly limit: AbortLimit; readonly reading: LimitReading | null };

export function limitReadings(
  session: Pick<SessionRecord, "runs" | "factor">,
  engine: MeasuredEngine,
): readonly LimitedReading[] {
  const points = meanPoints(session);
  return abortLimits(limitedEngine(engine, session)).map((limit) => ({
    limit,
    reading: worstReading(limit, points),
  }));
}

/** Over this the engine is boosted, whatever the maker built. Common practice, no source. */
const BOOSTED_KPA = 10;

/** The limits follow what was measured: the same engine has others once it is blown. */
export function limitedEngine(engine: MeasuredEngine, session: Pick<SessionRecord, "runs">): LimitedEngine {
  const isBlown = session.runs.some(
    ({ reduced }) => (reduced.channels.boostKPa?.greatest.value ?? 0) > BOOSTED_KPA,
  );
  return { ...engine, isBoosted: isBlown || engine.standardAspiration !== "natural" };
}
