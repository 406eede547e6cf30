import { sniffFile } from "@buildproof/documents";
import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { readJobRecords } from "./job-records";
import { keepFile } from "./keep-file";
import { isAttachable } from "./obligation-states";
import { refuse } from "./paperwork-refusals";
import { settleIfDone } from "./settle-job";
import { UploadedFile } from "./uploaded-file";

export const LARGEST_EVIDENCE_BYTES = 20 * 1024 * 1024;

/** Attaches a file that meets an obligation. What the file is, its bytes say. */
export const attachEvidence = command({
  name: "paperwork.attach-evidence",
  permission: "evidence:write",
  input: z.strictObject({
    obligationId: z.uuid("Open the hand-over page again and attach it from there."),
    file: z.instanceof(UploadedFile, { error: "Choose a file to attach." }),
    signatoryName: z.string().trim().max(200, "Keep the name under 200 characters.").default(""),
    note: z.string().trim().max(1_000, "Keep the note under 1,000 characters.").default(""),
  }),
  async run(work, { obligationId, file, signatoryName, note }) {
    const { tx, workshopId, person, now, audit } = work;
    const obligation = await tx.obligation.findUnique({
      where: { id: obligationId },
      include: { job: { select: { id: true, status: true } } },
    });
    if (!obligation) return refuse("obligation-not-found");
    if (!isAttachable(obligation.code, await readJobRecords(tx, obligation.jobId)))
      return refuse("record-not-uploaded");
    if (file.bytes.byteLength === 0) return refuse("file-empty");
    if (file.bytes.byteLength > LARGEST_EVIDENCE_BYTES)
      return refuse("file-too-large", { megabytes: Math.ceil(file.bytes.byteLength / 1024 / 1024) });
    const mediaType = await sniffFile(file.bytes);
    if (!mediaType) return refuse("file-kind");
    if (obligation.evidenceKind === "certificate" && signatoryName === "") return refuse("signatory-missing");
    const sha256 = await keepFile(work, { name: file.name, mediaType, bytes: file.bytes });
    const id = newId();
    await tx.evidence.create({
      data: {
        id,
        workshopId,
        obligationId,
        sha256,
        name: file.name,
        note,
        signatoryName,
        uploadedById: person.id,
        at: now,
      },
    });
    const { job } = obligation;
    audit({
      entity: "job",
      entityId: job.id,
      after: { evidence: file.name, obligation: obligation.title, sha256, evidenceId: id },
    });
    await settleIfDone(work, job.id);
    return ok({ evidenceId: id, jobId: job.id, sha256 });
  },
});
