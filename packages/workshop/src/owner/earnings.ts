import { margin } from "@buildproof/pricing";
import { type BasisPoints, type MinorUnits, minorUnits, sumMinorUnits } from "@buildproof/units";
import { type ByKind, byKind, costKinds } from "./cost-kind";
import type { JobFigures } from "./job-figures";

/** What some jobs sold for and cost together, as quoted and as it came. */
export type Earnings = {
  readonly jobs: number;
  readonly sellMinor: MinorUnits;
  readonly quotedMinor: ByKind<MinorUnits>;
  readonly actualMinor: ByKind<MinorUnits>;
  readonly quotedCostMinor: MinorUnits;
  readonly actualCostMinor: MinorUnits;
  readonly quotedMarginMinor: MinorUnits;
  readonly actualMarginMinor: MinorUnits;
  /** Share of the sell price; null when nothing was charged. */
  readonly quotedMargin: BasisPoints | null;
  readonly actualMargin: BasisPoints | null;
};

type Figures = Pick<JobFigures, "sellMinor" | "quotedMinor" | "actualMinor">;

/** Adds jobs up; one job is the sum of itself, so that the same definition serves both. */
export function earningsOf(jobs: readonly Figures[]): Earnings {
  const sellMinor = sumMinorUnits(jobs.map((job) => job.sellMinor));
  const quotedMinor = byKind((kind) => sumMinorUnits(jobs.map((job) => job.quotedMinor[kind])));
  const actualMinor = byKind((kind) => sumMinorUnits(jobs.map((job) => job.actualMinor[kind])));
  const quotedCostMinor = sumMinorUnits(costKinds.map((kind) => quotedMinor[kind]));
  const actualCostMinor = sumMinorUnits(costKinds.map((kind) => actualMinor[kind]));
  return {
    jobs: jobs.length,
    sellMinor,
    quotedMinor,
    actualMinor,
    quotedCostMinor,
    actualCostMinor,
    quotedMarginMinor: minorUnits(sellMinor - quotedCostMinor),
    actualMarginMinor: minorUnits(sellMinor - actualCostMinor),
    quotedMargin: margin(sellMinor, quotedCostMinor),
    actualMargin: margin(sellMinor, actualCostMinor),
  };
}
