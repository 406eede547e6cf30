import type { RunWarning } from "./reduced-run";
import type { RunRow } from "./run-row";

/** A pick-up that repeats one value for longer has lost the engine; at any ramp the digits move sooner. */
const LONGEST_STAND_S = 0.5;
/** The soak before a sweep and the limiter after it may stand still. */
const AT_THE_ENDS_RPM = 100;

type Stand = { readonly atRpm: number; readonly seconds: number };

/** Watches for an engine speed that is repeated, row after row, while time goes on. */
export class SpeedWatch {
  #sinceS = 0;
  #atRpm = Number.NaN;
  readonly #stands = new Map<number, number>();
  greatestRpm = 0;
  #firstRpm = Number.NaN;
  #lastRpm = Number.NaN;

  add({ timeS, engineRpm }: RunRow): void {
    if (engineRpm !== this.#atRpm) {
      this.#atRpm = engineRpm;
      this.#sinceS = timeS;
    } else if (timeS - this.#sinceS >= LONGEST_STAND_S) this.#stands.set(engineRpm, timeS - this.#sinceS);
    this.greatestRpm = Math.max(this.greatestRpm, engineRpm);
    if (Number.isNaN(this.#firstRpm)) this.#firstRpm = engineRpm;
    this.#lastRpm = engineRpm;
  }

  /** From the first row to the last; above nought the engine ended slower than it began. */
  get fell(): { readonly fromRpm: number; readonly toRpm: number; readonly byRpm: number } {
    return { fromRpm: this.#firstRpm, toRpm: this.#lastRpm, byRpm: this.#firstRpm - this.#lastRpm };
  }

  /** The longest stand inside a sweep. */
  warning(lowestRpm: number, highestRpm: number): RunWarning | null {
    let longest: Stand | null = null;
    for (const [atRpm, seconds] of this.#stands) {
      const isInside = atRpm > lowestRpm + AT_THE_ENDS_RPM && atRpm < highestRpm - AT_THE_ENDS_RPM;
      if (isInside && seconds > (longest?.seconds ?? 0)) longest = { atRpm, seconds };
    }
    return longest && { code: "speed-stands-still", ...longest };
  }
}
