import type { DisagreementCause, RunWarning } from "./reduced-run";
import type { RunRow } from "./run-row";

const KILOWATTS_PER_NEWTON_METRE_RPM = (2 * Math.PI) / 60_000;
const ALLOWED = 0.02;

/** Power that a row's torque makes at the speed it turns at; undefined without torque. */
export function powerFromRowTorque(row: RunRow): number | undefined {
  if (row.hubTorqueNm === undefined) return undefined;
  return row.hubTorqueNm * (row.hubRpm ?? row.engineRpm) * KILOWATTS_PER_NEWTON_METRE_RPM;
}

/**
 * Watches whether logged power is logged torque times speed. A constant ratio other than 1 is a unit
 * or a gear ratio; a ratio that wanders means that the channels are not of one measurement.
 *
 * @source Identity P = T·ω; the 2 % limit is common practice, no source.
 */
export class PowerIdentity {
  #rows = 0;
  #power = 0;
  #fromTorque = 0;
  #ratioSum = 0;
  #ratioSquareSum = 0;

  add(row: RunRow): void {
    const fromTorque = powerFromRowTorque(row);
    const power = row.hubPowerKw;
    if (power === undefined || fromTorque === undefined || !(power > 0) || !(fromTorque > 0)) return;
    this.#rows += 1;
    this.#power += power;
    this.#fromTorque += fromTorque;
    this.#ratioSum += power / fromTorque;
    this.#ratioSquareSum += (power / fromTorque) ** 2;
  }

  warning(): RunWarning | null {
    if (this.#rows === 0) return null;
    const ratio = this.#power / this.#fromTorque;
    if (Math.abs(ratio - 1) <= ALLOWED) return null;
    const mean = this.#ratioSum / this.#rows;
    const variance = Math.max(0, this.#ratioSquareSum / this.#rows - mean ** 2);
    const wanders = Math.sqrt(variance) / mean > 0.1;
    return {
      code: "power-and-torque-disagree",
      ratio,
      likely: wanders ? "channels-do-not-belong-together" : causeOf(ratio),
    };
  }
}

/** 1 kW is 1.3410 hp and 1.3596 PS; 1 N·m is 0.7376 lbf·ft, a ratio of 1.3558. */
function causeOf(ratio: number): DisagreementCause {
  if (ratio > 1.33 && ratio < 1.3485) return "power-in-hp";
  if (ratio >= 1.3485 && ratio < 1.37) return "power-in-ps-or-torque-in-lbft";
  return "torque-at-another-speed";
}
