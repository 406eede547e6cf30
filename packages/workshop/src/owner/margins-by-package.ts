import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { query } from "../core/use-case";
import { heldDeposits } from "./held-deposits";
import { jobFigures } from "./job-figures";
import { lostQuotes } from "./lost-quotes";
import { singleWork, singleWorkName } from "./package-code";
import { marginPct, packageSummary } from "./package-summary";
import { ownerPeriod, periodStart } from "./period";
import { quoteOutcomes, winRate } from "./quote-outcomes";
import { stoppedJobs } from "./stopped-jobs";

/** Every package side by side: quoted and earned, spread, quotes won, what a dyno hour left over. */
export const marginsByPackage = query({
  name: "owner.margins-by-package",
  permission: "margins:read",
  input: z.strictObject({ period: ownerPeriod }),
  async run({ tx, now }, { period }) {
    const { timeZone, currency } = await readSite(tx);
    const since = periodStart(period, now, timeZone);
    const jobs = await jobFigures(tx, { since });
    const outcomes = await quoteOutcomes(tx, { since, now, timeZone });
    const known = await tx.package.findMany({
      orderBy: { position: "asc" },
      select: { code: true, name: true },
    });
    const packages = [...known, { code: singleWork, name: singleWorkName.name }].map(({ code, name }) => {
      const isIt = (found: string | null) => (found ?? singleWork) === code;
      const quotes = outcomes.find(({ packageCode }) => isIt(packageCode));
      return {
        code,
        name,
        ...packageSummary(jobs.filter(({ packageCode }) => isIt(packageCode))),
        winRate: quotes ? winRate(quotes) : null,
        quotesDecided: quotes ? quotes.won + quotes.lost : 0,
      };
    });
    return ok({
      period,
      since,
      timeZone,
      currency,
      whole: packageSummary(jobs),
      packages,
      held: await heldDeposits(tx),
      lost: await lostQuotes(tx, { since }),
      stopped: (await stoppedJobs(tx, { since })).length,
      dots: jobs.flatMap((job) => {
        const value = marginPct(job);
        return value === null
          ? []
          : [{ jobId: job.jobId, number: job.number, packageName: job.packageName ?? "single work", value }];
      }),
    });
  },
});
