import {
  kilowatts,
  newtonMetres,
  powerFromTorque,
  revolutionsPerMinute,
  torqueFromPower,
} from "@buildproof/units";

/** N·m of a power at a speed above zero. */
export function torqueOf(powerKw: number, speedRpm: number): number {
  return torqueFromPower(kilowatts(powerKw), revolutionsPerMinute(speedRpm));
}

/** kW of a torque at a speed. */
export function powerOf(torqueNm: number, speedRpm: number): number {
  return powerFromTorque(newtonMetres(torqueNm), revolutionsPerMinute(speedRpm));
}
