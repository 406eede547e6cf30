import { safeCsv } from "@buildproof/documents";
import { type CurrencyCode, decimalAmount, type MinorUnits } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { costKinds } from "./cost-kind";
import { earningsOf } from "./earnings";
import { type JobFigures, jobFigures } from "./job-figures";
import { findPackage, jobsUnder, singleWorkName } from "./package-code";
import { ownerPeriod, periodStart } from "./period";
import { refuseOwner } from "./refuse-owner";

const kindTitles = {
  parts: "parts",
  labour: "labour",
  boughtIn: "bought-in",
  dyno: "dyno",
  rework: "rework",
  other: "other",
} as const;

/** The jobs behind the margins as a file for a spreadsheet: one line a job, amounts in the currency's main unit. */
export const exportMargins = query({
  name: "owner.export-margins",
  permission: "margins:read",
  input: z.strictObject({ period: ownerPeriod, code: z.string().max(100) }),
  async run({ tx, now }, { period, code }) {
    if (!(await findPackage(tx, code))) return refuseOwner("package-not-found");
    const { timeZone, currency } = await readSite(tx);
    const since = periodStart(period, now, timeZone);
    const jobs = await jobFigures(tx, jobsUnder(code, since));
    const csv = safeCsv(
      headerOf(currency),
      jobs.map((job) => rowOf(job, currency, timeZone)),
      { byteOrderMark: true },
    );
    return ok({ name: `margins-${code}-${period}-${dateInZone(now, timeZone)}.csv`, csv });
  },
});

function headerOf(currency: CurrencyCode): string[] {
  const money = (title: string) => `${title} (${currency})`;
  return [
    "job",
    "package",
    "customer",
    "plate",
    "vehicle",
    "handed over",
    money("sold, without tax"),
    ...costKinds.map((kind) => money(`${kindTitles[kind]}, quoted cost`)),
    ...costKinds.map((kind) => money(`${kindTitles[kind]}, actual cost`)),
    money("margin, quoted"),
    money("margin, actual"),
    "margin, quoted (%)",
    "margin, actual (%)",
    "labour, quoted (h)",
    "labour, clocked (h)",
    "dyno, quoted (h)",
    "dyno, charged (h)",
  ];
}

function rowOf(job: JobFigures, currency: CurrencyCode, timeZone: string): (string | number | null)[] {
  const earned = earningsOf([job]);
  const money = (amount: MinorUnits) => Number(decimalAmount(amount, currency));
  const hours = (figure: number) => Math.round(figure * 100) / 100;
  const percent = (share: number | null) => (share === null ? null : share / 100);
  return [
    job.number,
    job.packageName ?? singleWorkName.name,
    job.customerName,
    job.plate,
    job.modelName,
    job.handedOverAt ? dateInZone(job.handedOverAt, timeZone) : null,
    money(job.sellMinor),
    ...costKinds.map((kind) => money(job.quotedMinor[kind])),
    ...costKinds.map((kind) => money(job.actualMinor[kind])),
    money(earned.quotedMarginMinor),
    money(earned.actualMarginMinor),
    percent(earned.quotedMargin),
    percent(earned.actualMargin),
    hours(job.quotedLabourHours),
    hours(job.clockedHours),
    hours(job.quotedDynoHours),
    hours(job.dynoHours),
  ];
}
