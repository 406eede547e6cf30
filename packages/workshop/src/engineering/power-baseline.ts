import { dayInWords } from "../quotes/day-in-words";
import type { ModelFigures } from "./stored-figures";

export type PowerPoint = { readonly speedRpm: number; readonly powerKw: number };

/** A session on the dyno that a forecast may rest on, the mean of its runs that count. */
export type MeasuredBaseline = {
  readonly sessionId: string;
  /** A date in the site's zone. */
  readonly doneOn: string;
  readonly runs: number;
  readonly spreadPct: number;
  /** At the hubs. */
  readonly corrected: readonly PowerPoint[];
  readonly observed: readonly PowerPoint[];
  /** The standard and edition of the correction. */
  readonly code: string;
};

/** What the vehicle makes before anything is changed. */
export type PowerBaseline = {
  readonly source: "measured" | "rated";
  readonly at: "hubs" | "crank";
  readonly points: readonly PowerPoint[];
  /** Which of the two it is, in words. */
  readonly sentence: string;
  readonly sessionId: string | null;
};

/**
 * The vehicle's own run where one stands; else the maker's rating, which is told at the hubs by taking off the
 * driveline. A turbo-diesel's controller holds its air, so its run is taken as observed: a correction for air would
 * credit it with power that it did not make.
 */
export function powerBaseline(figures: ModelFigures, measured: MeasuredBaseline | null): PowerBaseline {
  const { redlineRpm, ratedAtCrank } = figures.engine;
  const isDiesel = figures.fuelKind === "diesel";
  const within = (points: readonly PowerPoint[]) =>
    points.filter(({ speedRpm, powerKw }) => speedRpm <= redlineRpm && powerKw > 1);
  const run = measured && within(isDiesel ? measured.observed : measured.corrected);
  if (measured && run && run.length > 1) {
    const air = isDiesel ? "as observed" : `corrected to ${measured.code}`;
    return {
      source: "measured",
      at: "hubs",
      points: run,
      sentence: `From this vehicle's own baseline of ${dayInWords(measured.doneOn)}, mean of ${measured.runs} runs, ${air}.`,
      sessionId: measured.sessionId,
    };
  }
  return {
    source: "rated",
    at: "crank",
    points: within(ratedAtCrank),
    sentence:
      "From the maker's rating less the driveline: this vehicle has no baseline of its own that stands.",
    sessionId: null,
  };
}
