import { margin, type Spread, spread } from "@buildproof/pricing";
import { type MinorUnits, minorUnits, roundedQuotient } from "@buildproof/units";
import { costKinds } from "./cost-kind";
import { type Earnings, earningsOf } from "./earnings";
import type { JobFigures } from "./job-figures";

/** How the jobs of a package went, as the owner compares packages. */
export type PackageSummary = {
  readonly earnings: Earnings;
  /** Margin job by job, per cent of the sell price, as it came. */
  readonly spread: Spread | null;
  /** Jobs that came back and cost something again. */
  readonly cameBack: number;
  readonly quotedDynoHours: number;
  readonly dynoHours: number;
  /** What an hour of the dyno left over, where the jobs took any. */
  readonly earnedPerDynoHourMinor: MinorUnits | null;
};

export function packageSummary(jobs: readonly JobFigures[]): PackageSummary {
  const earnings = earningsOf(jobs);
  const dynoHours = jobs.reduce((sum, job) => sum + job.dynoHours, 0);
  return {
    earnings,
    spread: spread(jobs.flatMap((job) => marginPct(job) ?? [])),
    cameBack: jobs.filter((job) => job.actualMinor.rework > 0).length,
    quotedDynoHours: jobs.reduce((sum, job) => sum + job.quotedDynoHours, 0),
    dynoHours,
    earnedPerDynoHourMinor: perHour(earnings.actualMarginMinor, dynoHours),
  };
}

/** A job's margin as it came, per cent with two decimals; null when nothing was charged. */
export function marginPct(job: JobFigures): number | null {
  const cost = minorUnits(costKinds.reduce((sum, kind) => sum + job.actualMinor[kind], 0));
  const share = margin(job.sellMinor, cost);
  return share === null ? null : share / 100;
}

function perHour(amount: MinorUnits, hours: number): MinorUnits | null {
  const hundredths = BigInt(Math.round(hours * 100));
  return hundredths === 0n ? null : minorUnits(roundedQuotient(BigInt(amount) * 100n, hundredths));
}
