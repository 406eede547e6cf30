import { priceForMargin, spread } from "@buildproof/pricing";
import { type MinorUnits, minorUnits, roundedQuotient } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { query } from "../core/use-case";
import { earningsOf } from "./earnings";
import { type JobFigures, jobFigures } from "./job-figures";
import { allWork, findPackage, jobsUnder, singleWork } from "./package-code";
import { marginPct, packageSummary } from "./package-summary";
import { ownerPeriod, periodStart } from "./period";
import { quoteOutcomes, winRate } from "./quote-outcomes";
import { refuseOwner } from "./refuse-owner";
import { stoppedJobs } from "./stopped-jobs";

/** One package: from quoted to actual, its jobs one by one, how it went over the quarters, what it should sell at. */
export const packageMargin = query({
  name: "owner.package-margin",
  permission: "margins:read",
  input: z.strictObject({ code: z.string().max(100), period: ownerPeriod }),
  async run({ tx, now }, { code, period }) {
    const found = await findPackage(tx, code);
    // All work together has a page of its own.
    if (!found || code === allWork) return refuseOwner("package-not-found");
    const { timeZone, currency } = await readSite(tx);
    const since = periodStart(period, now, timeZone);
    const jobs = await jobFigures(tx, jobsUnder(code, since));
    const outcomes = (await quoteOutcomes(tx, { since, now, timeZone })).find(
      ({ packageCode }) => (packageCode ?? singleWork) === code,
    ) ?? { won: 0, lost: 0, open: 0 };
    return ok({
      ...found,
      period,
      timeZone,
      currency,
      ...packageSummary(jobs),
      quotes: { won: outcomes.won, lost: outcomes.lost, open: outcomes.open, winRate: winRate(outcomes) },
      price: pricesOf(jobs),
      jobs: jobs.map(jobLine),
      quarters: quartersOf(jobs),
      stopped: await stoppedJobs(tx, { since, packageCode: code === singleWork ? null : code }),
    });
  },
});

function jobLine(job: JobFigures) {
  const { jobId, number, customerName, plate, modelName, handedOverAt, sellMinor } = job;
  const { quotedMarginMinor, actualMarginMinor, quotedMargin, actualMargin } = earningsOf([job]);
  return {
    jobId,
    number,
    customerName,
    plate,
    modelName,
    handedOverAt,
    sellMinor,
    quotedMarginMinor,
    actualMarginMinor,
    quotedMargin,
    actualMargin,
  };
}

/** Mean sell price of a job, and what it would have to be to earn the quoted share at what jobs really cost. */
function pricesOf(
  jobs: readonly JobFigures[],
): { readonly isMinor: MinorUnits; readonly neededMinor: MinorUnits } | null {
  const { sellMinor, quotedCostMinor, actualCostMinor } = earningsOf(jobs);
  if (sellMinor <= 0 || actualCostMinor < 0) return null;
  const needed = priceForMargin(actualCostMinor, { sellMinor, costMinor: quotedCostMinor });
  const perJob = (total: MinorUnits) => minorUnits(roundedQuotient(BigInt(total), BigInt(jobs.length)));
  return needed === null ? null : { isMinor: perJob(sellMinor), neededMinor: perJob(needed) };
}

function quartersOf(jobs: readonly JobFigures[]) {
  const quarters = [...new Set(jobs.map((job) => job.quarter ?? ""))].toSorted();
  return quarters.map((quarter) => {
    const within = jobs.filter((job) => job.quarter === quarter);
    return {
      quarter,
      jobs: within.length,
      spread: spread(within.flatMap((job) => marginPct(job) ?? [])),
      quotedMargin: earningsOf(within).quotedMargin,
    };
  });
}
