import type { TorqueCap } from "./forecast-question";

/** The lowest cap at a speed; a bare number holds everywhere. */
export function capAt(caps: readonly (number | TorqueCap)[], speedRpm: number): TorqueCap | null {
  let lowest: TorqueCap | null = null;
  for (const cap of caps) {
    const each = typeof cap === "number" ? { torqueNm: cap } : cap;
    const holds = speedRpm >= (each.fromRpm ?? 0) && speedRpm <= (each.toRpm ?? Number.POSITIVE_INFINITY);
    if (holds && (!lowest || each.torqueNm < lowest.torqueNm)) lowest = each;
  }
  return lowest;
}
