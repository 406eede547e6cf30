import type { Transaction } from "@buildproof/database";
import { type DynoCertificateDocument, dynoCertificatePdf } from "@buildproof/documents";
import { z } from "zod";
import { letterHead } from "../core/letter-head";
import { ok } from "../core/result";
import { dateInZone } from "../core/site-date";
import { query } from "../core/use-case";
import { refuse } from "./dyno-refusals";
import { releasedFigures } from "./released-figures";
import type { SessionRecord } from "./session-record";

/** The dyno certificate of a job, as PDF: what was measured, when, in what air, and the released verdict. */
export const readDynoCertificate = query({
  name: "dyno.read-certificate",
  permission: "dyno:read",
  input: z.strictObject({ jobId: z.uuid("Open the job again.") }),
  async run({ tx }, { jobId }) {
    const job = await tx.job.findUnique({ where: { id: jobId }, select: jobSelect });
    if (!job) return refuse("job-not-found");
    const verdict = await tx.verdict.findFirst({
      where: { jobId },
      orderBy: [{ at: "desc" }, { id: "desc" }],
    });
    if (!verdict) return refuse("verdict-not-released");
    const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
    const released = await releasedFigures(tx, verdict, site.timeZone);
    if (!released) return refuse("nothing-to-certify");
    const document: DynoCertificateDocument = {
      workshop: letterHead(site),
      customer: { name: job.customer.name },
      vehicle: {
        description: job.vehicle.vehicleModel.name,
        plate: job.vehicle.plate,
        vin: job.vehicle.vin,
        odometerKm: job.vehicle.odometerKm,
      },
      jobNumber: String(job.number),
      dyno: released.figures,
      operator: await operatorOf(tx, released.proof),
      issuedOn: dateInZone(verdict.at, site.timeZone),
      // The instant of the verdict, not of the printing: the same certificate is the same bytes.
      madeAt: verdict.at.toISOString(),
    };
    return ok({ name: `dyno-certificate-job-${job.number}.pdf`, bytes: await dynoCertificatePdf(document) });
  },
});

const jobSelect = {
  number: true,
  customer: { select: { name: true } },
  vehicle: {
    select: { plate: true, vin: true, odometerKm: true, vehicleModel: { select: { name: true } } },
  },
} as const;

async function operatorOf(tx: Transaction, { operatorId }: SessionRecord): Promise<string> {
  const person = operatorId ? await tx.person.findUnique({ where: { id: operatorId } }) : null;
  return person?.name ?? "not recorded";
}
