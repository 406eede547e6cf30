import { z } from "zod";
import { newId } from "../core/new-id";
import type { Work } from "../core/use-case";
import { inspectionVisit, withoutRecorded } from "./inspection-visit";
import { orderSteps } from "./order-steps";

/** A step inside access work, as the catalogue's JSON column holds it. */
const accessStep = z.object({
  text: z.string(),
  kind: z.enum(["tick", "measurement", "torque", "photo", "serial", "holdPoint"]),
  unit: z.string(),
  low: z.number().nullable(),
  target: z.number().nullable(),
  high: z.number().nullable(),
  cautions: z.array(z.string()),
  oneUsePart: z.string(),
  signer: z.string(),
});
const accessSteps = z.object({ out: z.array(accessStep), back: z.array(accessStep) });

/**
 * Copies the procedures of a job's operations onto its card, in the order of the work, access work once. What
 * the build has on record of its inspection visit is not asked for again: its hold point would bar all else.
 */
export async function layOutSteps(
  { tx, workshopId }: Pick<Work, "tx" | "workshopId">,
  job: { readonly id: string; readonly buildId: string; readonly itemCodes: readonly string[] },
): Promise<void> {
  const items = await tx.item.findMany({ where: { code: { in: [...job.itemCodes] } } });
  const chosen = await tx.operation.findMany({
    where: { code: { in: items.flatMap((item) => item.operations) } },
    orderBy: [{ position: "asc" }, { code: "asc" }],
    include: { steps: { orderBy: { position: "asc" } } },
  });
  const operations = withoutRecorded(chosen, await inspectionVisit(tx, job.buildId));
  const access = await tx.accessWork.findMany({ orderBy: { code: "asc" } });
  const card = orderSteps(
    operations.map(({ code, name, access: needed, steps }) => ({
      code,
      name,
      access: needed,
      steps: steps.map((step) => accessStep.parse(step)),
    })),
    access.map(({ code, name, needs, steps }) => ({ code, name, needs, ...accessSteps.parse(steps) })),
  );
  await tx.jobStep.createMany({
    data: card.map(({ code, name, step }, position) => ({
      id: newId(),
      workshopId,
      jobId: job.id,
      position,
      operationCode: code,
      operationName: name,
      ...step,
    })),
  });
}
