import type { Transaction } from "@buildproof/database";
import { type JobRecords, type RecordStanding, recordStanding } from "./job-records";

/** Met at the keys, by the day that is agreed on the hand-over form. */
export const followUpCode = "re-torque-booked";

/** Met, holding the vehicle back (for safety or not), due at the keys, or for the desk to confirm. */
export type ObligationStanding = "met" | "open-safety" | "open" | "at-the-keys" | "to-confirm";

export type ObligationState = {
  readonly id: string;
  readonly code: string;
  readonly title: string;
  readonly because: string;
  readonly source: string;
  readonly evidenceKind: string;
  readonly signatory: string;
  readonly safety: boolean;
  readonly blocksHandOver: boolean;
  readonly met: boolean;
  readonly standing: ObligationStanding;
  /** Whether a file meets it; else the job's own record does, or the day agreed at the keys. */
  readonly attachable: boolean;
  /** How it stands. */
  readonly sentence: string;
  readonly record: RecordStanding | null;
  readonly evidence: readonly {
    readonly id: string;
    readonly sha256: string;
    readonly name: string;
    readonly note: string;
    readonly signatoryName: string;
    readonly at: Date;
  }[];
};

/** Every obligation of a job: met by evidence, by the job's own record, or open. */
export async function obligationStates(
  tx: Transaction,
  jobId: string,
  records: JobRecords,
): Promise<readonly ObligationState[]> {
  const rows = await tx.obligation.findMany({
    where: { jobId },
    orderBy: { position: "asc" },
    include: { evidence: { orderBy: { at: "desc" } } },
  });
  return rows.map(({ evidence, workshopId: _, jobId: __, position: ___, ...row }) => {
    const record = recordStanding(row.code, records);
    // No file stands in for a torque that is not on the card.
    const met = record ? record.met : evidence.length > 0;
    const attachable = isAttachable(row.code, records);
    const standing = met ? "met" : standingWhileOpen(row);
    const sentence = sentenceOf(row, evidence, record);
    return { ...row, met, standing, attachable, record, evidence, sentence };
  });
}

type Row = {
  readonly code: string;
  readonly evidenceKind: string;
  readonly safety: boolean;
  readonly blocksHandOver: boolean;
};

function standingWhileOpen({ code, safety, blocksHandOver }: Row): ObligationStanding {
  if (code === followUpCode) return "at-the-keys";
  if (safety) return "open-safety";
  return blocksHandOver ? "open" : "to-confirm";
}

function sentenceOf(
  row: Row,
  evidence: readonly { readonly name: string; readonly signatoryName: string }[],
  record: RecordStanding | null,
): string {
  if (record) return record.sentence;
  const [newest] = evidence;
  if (newest) {
    const by = newest.signatoryName ? `, signed by ${newest.signatoryName}` : "";
    return `Attached: ${newest.name}${by}.`;
  }
  if (row.code === followUpCode) return "Agreed when the keys are handed over.";
  return row.blocksHandOver
    ? `Open: attach the ${row.evidenceKind}.`
    : `Not attached. It does not hold the vehicle back; confirm what applies, then attach the ${row.evidenceKind}.`;
}

export function isAttachable(code: string, records: JobRecords): boolean {
  return code !== followUpCode && recordStanding(code, records) === null;
}

/** Whether an obligation holds the vehicle back now. */
export function holdsBack({ standing }: Pick<ObligationState, "standing">): boolean {
  return standing === "open" || standing === "open-safety";
}
