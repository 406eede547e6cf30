import { powerFromRowTorque } from "./power-identity";
import { type ExclusionReason, type Exclusions, exclusionReasons } from "./reduced-run";
import type { RunRow } from "./run-row";
import { SweepBins } from "./sweep-bins";

/** A shorter rise of engine speed is a blip of the throttle. */
export const SHORTEST_SWEEP_RPM = 500;

export type Band = { readonly fromRpm: number; readonly toRpm: number };

/** A speed that jumps further than this from both neighbours is a fault of the pick-up. */
const SPIKE_RPM = 250;
/** A fall of more than this ends a sweep: the throttle is closed or the gearbox has shifted. */
const FALL_RPM = 100;

/** Finds the longest rise of engine speed under power in a stream of rows, and counts what it leaves out. */
export class SweepFinder {
  readonly #band: Band;
  readonly #counts = new Map<ExclusionReason, number>();
  #before: RunRow | null = null;
  #held: RunRow | null = null;
  #current = new SweepBins();
  #best = new SweepBins();
  rowsRead = 0;
  rowsWithPower = 0;
  rowsBackInTime = 0;
  /** The longest rise that was passed over for a longer one. */
  otherRise: Band | null = null;

  constructor(band: Band) {
    this.#band = band;
  }

  add(row: RunRow): void {
    this.rowsRead += 1;
    const power = observedPower(row);
    if (power !== undefined) this.rowsWithPower += 1;
    if (power === undefined || !Number.isFinite(power + row.engineRpm + row.timeS)) {
      this.#exclude("not-a-number");
      return;
    }
    // A row is judged when the next one is known, because a spike shows only between two neighbours.
    if (this.#held) {
      if (row.timeS < this.#held.timeS) this.rowsBackInTime += 1;
      this.#judge(this.#held, this.#before ?? row, row);
    }
    this.#before = this.#held;
    this.#held = row;
  }

  finish(): { readonly sweep: SweepBins; readonly excluded: Exclusions } {
    if (this.#held) this.#judge(this.#held, this.#before ?? this.#held, this.#before ?? this.#held);
    this.#held = null;
    this.#closeSweep();
    return { sweep: this.#best, excluded: this.#exclusions() };
  }

  #judge(row: RunRow, before: RunRow, after: RunRow): void {
    const rpm = row.engineRpm;
    const power = observedPower(row) ?? 0;
    if (Math.abs(rpm - median(before.engineRpm, rpm, after.engineRpm)) > SPIKE_RPM)
      this.#exclude("speed-spike");
    else if (rpm < this.#band.fromRpm || rpm > this.#band.toRpm) this.#exclude("outside-band");
    else if (power <= 0) this.#exclude("not-driving");
    else {
      if (rpm < this.#current.highestRpm - FALL_RPM) this.#closeSweep();
      this.#current.add(row, power);
    }
  }

  #closeSweep(): void {
    const [kept, dropped] =
      this.#current.spanRpm > this.#best.spanRpm ? [this.#current, this.#best] : [this.#best, this.#current];
    this.#exclude("outside-sweep", dropped.rows);
    const known = this.otherRise ? this.otherRise.toRpm - this.otherRise.fromRpm : SHORTEST_SWEEP_RPM;
    if (dropped.spanRpm >= known) this.otherRise = { fromRpm: dropped.lowestRpm, toRpm: dropped.highestRpm };
    this.#best = kept;
    this.#current = new SweepBins();
  }

  #exclude(reason: ExclusionReason, rows = 1): void {
    this.#counts.set(reason, (this.#counts.get(reason) ?? 0) + rows);
  }

  #exclusions(): Exclusions {
    const count = (reason: ExclusionReason) => this.#counts.get(reason) ?? 0;
    // Every reason is a key, because the list of reasons is where the keys come from.
    return Object.fromEntries(exclusionReasons.map((reason) => [reason, count(reason)])) as Exclusions;
  }
}

/** Logged power, or what the logged torque makes. */
function observedPower(row: RunRow): number | undefined {
  return row.hubPowerKw ?? powerFromRowTorque(row);
}

function median(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
