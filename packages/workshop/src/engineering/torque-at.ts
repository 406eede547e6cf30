import { kilowatts, revolutionsPerMinute, torqueFromPower } from "@buildproof/units";

/** N·m of a power at an engine speed above zero. */
export function newtonMetresAt(powerKw: number, speedRpm: number): number {
  return torqueFromPower(kilowatts(powerKw), revolutionsPerMinute(speedRpm));
}
