import type { Transaction } from "@buildproof/database";
import type { DynoFigures } from "@buildproof/documents";
import { releasedFigures } from "../dyno/released-figures";

/** Before and after with the verdict, as it was released; undefined when the job has none. */
export async function packDyno(
  tx: Transaction,
  jobId: string,
  timeZone: string,
): Promise<DynoFigures | undefined> {
  const verdict = await tx.verdict.findFirst({ where: { jobId }, orderBy: [{ at: "desc" }, { id: "desc" }] });
  const released = verdict && (await releasedFigures(tx, verdict, timeZone));
  return released?.figures;
}
