import type { Transaction } from "@buildproof/database";
import { coefficientAt, exactDecimal, type MinorUnits, minorUnits, roundedQuotient } from "@buildproof/units";
import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { jobStatusWords } from "../jobs/job-states";
import type { JobStatus } from "../jobs/job-status";
import { receivedOn } from "../quotes/quote-money";
import { clockedWork } from "./clocked-work";
import { type CostKind, costKinds } from "./cost-kind";
import { earningsOf } from "./earnings";
import { jobFigures } from "./job-figures";
import { operationHours } from "./operation-hours";
import { singleWork } from "./package-code";
import { recordedCosts } from "./recorded-costs";
import { refuseOwner } from "./refuse-owner";

/** One job's margin, with the lines, the clock entries and the recorded costs that it is the sum of. */
export const jobMargin = query({
  name: "owner.job-margin",
  permission: "margins:read",
  input: z.strictObject({ jobId: z.string() }),
  async run({ tx, now }, { jobId }) {
    const isId = z.uuid().safeParse(jobId).success;
    const [figures] = isId ? await jobFigures(tx, { jobId }) : [];
    if (!figures) return refuseOwner("job-not-found");
    const { versionId, quoteId, status, finishedAt } = await tx.job.findUniqueOrThrow({
      where: { id: jobId },
    });
    const { timeZone, currency, hourRates } = await readSite(tx);
    const earnings = earningsOf([figures]);
    const clock = await clockedWork(tx, jobId);
    const costs = await recordedCosts(tx, [jobId]);
    return ok({
      ...figures,
      packageCode: figures.packageCode ?? singleWork,
      statusWords: jobStatusWords[status],
      ending: endingOf(status, finishedAt),
      timeZone,
      currency,
      today: dateInZone(now, timeZone),
      earnings,
      lines: await quotedLines(tx, versionId),
      clock,
      operations: await operationHours(tx, [jobId], "workshop"),
      costs,
      labourCostMinorPerHour: hourRates.workshop.costMinor,
      dynoCostMinorPerHour: hourRates.dyno.costMinor,
      receivedMinor: await received(tx, quoteId),
      /** Kinds that were quoted to cost something and have nothing against them yet. */
      nothingYet: costKinds.filter(
        (kind) => earnings.quotedMinor[kind] > 0 && earnings.actualMinor[kind] === 0,
      ),
    });
  },
});

/** Whether the figures are final: a job handed over may still come back, a stopped one never sold what was quoted. */
function endingOf(
  status: JobStatus,
  finishedAt: Date | null,
): "handed-over" | "stopped" | "done" | "going-on" {
  if (status === "handedOver") return "handed-over";
  if (status === "stopped") return "stopped";
  return finishedAt ? "done" : "going-on";
}

async function quotedLines(tx: Transaction, versionId: string) {
  const lines = await tx.quoteLine.findMany({
    where: { versionId },
    orderBy: { position: "asc" },
  });
  const codes = lines.map(({ code }) => code);
  const boughtIn = await tx.item.findMany({ where: { code: { in: codes }, kind: "bought-in" } });
  const boughtInCodes = new Set(boughtIn.map(({ code }) => code));
  return lines.map((line) => ({
    id: line.id,
    kind: costKindOf(line, boughtInCodes),
    description: line.description,
    quantity: line.quantity.toNumber(),
    unit: line.unit,
    sellMinor: minorUnits(line.netMinor),
    costMinor: costOf(line.quantity.toFixed(), line.unitCostMinor),
  }));
}

function costKindOf(
  line: { readonly kind: string; readonly code: string },
  boughtIn: ReadonlySet<string>,
): CostKind {
  if (line.kind === "operation" || line.kind === "access") return "labour";
  if (line.kind === "dyno") return "dyno";
  return boughtIn.has(line.code) ? "boughtIn" : "parts";
}

/** quantity × cost, rounded once: as the quote has it. */
function costOf(quantity: string, unitCostMinor: bigint): MinorUnits {
  const exact = exactDecimal(quantity);
  return minorUnits(
    roundedQuotient(coefficientAt(exact, exact.scale) * unitCostMinor, 10n ** BigInt(exact.scale)),
  );
}

/** What the customer has paid, less what went back. */
async function received(tx: Transaction, quoteId: string): Promise<MinorUnits> {
  return minorUnits(await receivedOn(tx, quoteId));
}
