import { safeCsv } from "@buildproof/documents";
import { newId } from "../core/new-id";
import type { PersonWork } from "../core/use-case";
import { keepFile } from "./keep-file";
import { followUpCode, type ObligationState } from "./obligation-states";

type Of = { readonly number: number; readonly followUpOn: string | null };

/**
 * Writes down, as a file that stays with the job, what the job's own record says for each obligation that it
 * meets: the database lets no vehicle go whose obligations have no evidence.
 */
export async function recordEvidence(
  work: PersonWork,
  job: Of,
  obligations: readonly ObligationState[],
): Promise<void> {
  for (const obligation of obligations) {
    const table = tableOf(obligation, job);
    if (obligation.evidence.length > 0 || !table) continue;
    const [header = [], ...rows] = table;
    const name = `job-${job.number}-${obligation.code}.csv`;
    const bytes = new TextEncoder().encode(safeCsv(header, rows, { byteOrderMark: true }));
    const sha256 = await keepFile(work, { name, mediaType: "text/csv", bytes });
    await work.tx.evidence.create({
      data: {
        id: newId(),
        workshopId: work.workshopId,
        obligationId: obligation.id,
        sha256,
        name,
        note: "Written from the job's own record at hand-over.",
        uploadedById: work.person.id,
        at: work.now,
      },
    });
  }
}

function tableOf({ code, record }: ObligationState, job: Of): readonly (readonly string[])[] | null {
  if (code === followUpCode && job.followUpOn) return [["re-torque visit agreed for"], [job.followUpOn]];
  return record?.met ? record.table : null;
}
