import { type Obligation, obligationsFor } from "@buildproof/compliance";
import type { Transaction } from "@buildproof/database";
import { newId } from "../core/new-id";
import type { Work } from "../core/use-case";
import { buildTraitsOf } from "./build-traits";

type JobItems = { readonly id: string; readonly itemCodes: readonly string[] };

/**
 * Lists what promises, safety and law ask of a job, from what is chosen and what its card holds. Called again,
 * it adds what is new and leaves what is there.
 */
export async function layOutObligations(
  { tx, workshopId }: Pick<Work, "tx" | "workshopId">,
  job: JobItems,
): Promise<number> {
  const wanted = await obligationsOf(tx, job);
  const there = await tx.obligation.findMany({ where: { jobId: job.id }, select: { code: true } });
  const known = new Set(there.map(({ code }) => code));
  const missing = wanted.filter(({ code }) => !known.has(code));
  await tx.obligation.createMany({
    data: missing.map((obligation, index) => ({
      id: newId(),
      workshopId,
      jobId: job.id,
      position: there.length + index,
      code: obligation.code,
      title: obligation.title,
      because: obligation.because,
      source: obligation.source,
      evidenceKind: obligation.evidenceKind,
      signatory: obligation.signatory,
      safety: obligation.safety,
      blocksHandOver: obligation.blocksHandOver,
    })),
  });
  return missing.length;
}

/** What the rules ask of a job, whether it was laid out or not. */
export async function obligationsOf(tx: Transaction, job: JobItems): Promise<readonly Obligation[]> {
  const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
  return obligationsFor(site.jurisdiction.slice(0, 2), await buildTraitsOf(tx, job));
}
