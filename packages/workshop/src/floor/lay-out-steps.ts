import { newId } from "../core/new-id";
import type { Work } from "../core/use-case";

/** Copies the procedures of a job's operations onto its card, in the order of the work. */
export async function layOutSteps(
  { tx, workshopId }: Pick<Work, "tx" | "workshopId">,
  job: { readonly id: string; readonly itemCodes: readonly string[] },
): Promise<void> {
  const items = await tx.item.findMany({ where: { code: { in: [...job.itemCodes] } } });
  const operations = await tx.operation.findMany({
    where: { code: { in: items.flatMap((item) => item.operations) } },
    orderBy: { position: "asc" },
    include: { steps: { orderBy: { position: "asc" } } },
  });
  const steps = operations.flatMap((operation) => operation.steps.map((step) => ({ operation, step })));
  await tx.jobStep.createMany({
    data: steps.map(({ operation, step }, position) => ({
      id: newId(),
      workshopId,
      jobId: job.id,
      position,
      operationCode: operation.code,
      operationName: operation.name,
      text: step.text,
      kind: step.kind,
      unit: step.unit,
      low: step.low,
      target: step.target,
      high: step.high,
      cautions: step.cautions,
      oneUsePart: step.oneUsePart,
      signer: step.signer,
    })),
  });
}
