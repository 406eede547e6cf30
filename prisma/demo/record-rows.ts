import type { DemoWorkshop } from "./demo-workshop";

type Told = {
  readonly at: Date | string | undefined;
  /** Nobody of the workshop: the customer, by link. */
  readonly by: string | null | undefined;
  readonly useCase: string;
  readonly entity: "job" | "fault" | "payment";
  readonly entityId: string;
  readonly after: Readonly<Record<string, string | number>>;
};

/** The audit record of what the other rows say was done, as the use cases would have written it. */
export function addRecord(workshop: DemoWorkshop): void {
  const { rows, id: workshopId } = workshop;
  const { newId } = workshop.withRandom("record");
  const names = new Map(rows.of("person").map(({ id, name }) => [id, name]));
  for (const { at, by, ...told } of [...ofJobs(workshop), ...besideJobs(workshop)]) {
    if (!(at instanceof Date)) continue;
    rows.add("auditEvent", {
      id: newId(at),
      workshopId,
      at,
      actorKind: by ? "person" : "customer",
      actorId: by ?? null,
      actorName: (by && names.get(by)) || "customer by link",
      ...told,
      requestId: "demo",
    });
  }
}

function ofJobs({ rows }: DemoWorkshop): readonly Told[] {
  const job = (jobId: string) => ({ entity: "job" as const, entityId: jobId });
  return [
    ...rows.of("job").map(({ id, number, versionId, createdAt }) => ({
      ...job(id),
      at: createdAt,
      by: null,
      useCase: "quotes.accept",
      after: { number, versionId },
    })),
    ...rows.of("goodsIn").map(({ jobId, countedAt, countedById, complete, missing }) => ({
      ...job(jobId),
      at: countedAt,
      by: countedById,
      useCase: "jobs.count-goods-in",
      after: { goodsIn: complete ? "complete" : (missing ?? "") },
    })),
    ...rows.of("checkIn").map(({ jobId, at, personId }) => ({
      ...job(jobId),
      at,
      by: personId,
      useCase: "floor.check-in",
      after: { status: "checkedIn" },
    })),
    ...rows.of("verdict").map(({ jobId, at, personId, sentence, outcome, proofId }) => ({
      ...job(jobId),
      at,
      by: personId,
      useCase: "dyno.release-verdict",
      after: { verdict: sentence, outcome, proofId },
    })),
    ...rows.of("handOver").map(({ jobId, at, personId, receivedBy, odometerKm }) => ({
      ...job(jobId),
      at,
      by: personId,
      useCase: "paperwork.hand-over",
      after: { receivedBy, odometerKm },
    })),
  ];
}

function besideJobs({ rows }: DemoWorkshop): readonly Told[] {
  return [
    ...rows.of("payment").map(({ id, recordedAt, recordedById, quoteId, kind, amountMinor, reason }) => ({
      entity: "payment" as const,
      entityId: id,
      at: recordedAt,
      by: recordedById,
      useCase: kind === "refund" ? "quotes.record-refund" : "quotes.record-payment",
      after: { quoteId, kind, amountMinor: String(amountMinor), ...(reason ? { reason } : {}) },
    })),
    ...rows.of("fault").map(({ id, jobId, raisedAt, raisedById, sentence }) => ({
      entity: "fault" as const,
      entityId: id,
      at: raisedAt,
      by: raisedById,
      useCase: "floor.raise-fault",
      after: { job: jobId, sentence },
    })),
  ];
}
