import type { Transaction } from "@buildproof/database";
import type { WorkBlock } from "./work-block";

export type KeptBlock = WorkBlock & { readonly id: string };

/** The standing bookings of a job that are not over. */
export async function jobBlocks(tx: Transaction, jobId: string, now: Date): Promise<readonly KeptBlock[]> {
  const bookings = await tx.booking.findMany({
    where: { jobId, cancelledAt: null, endsAt: { gt: now } },
    include: { resource: { include: { person: { select: { active: true, skills: true } } } } },
    orderBy: { startsAt: "asc" },
  });
  return bookings.map(({ id, resource, startsAt, endsAt, work }) => ({
    id,
    resource,
    startsAt,
    endsAt,
    work,
  }));
}

/** Sentences for the blocks that others hold already. */
export async function heldByOthers(
  tx: Transaction,
  blocks: readonly WorkBlock[],
  say: (block: WorkBlock) => Promise<string>,
  except?: string,
): Promise<readonly string[]> {
  const points: string[] = [];
  for (const block of blocks) {
    const held = await tx.booking.count({
      where: {
        resourceId: block.resource.id,
        cancelledAt: null,
        startsAt: { lt: block.endsAt },
        endsAt: { gt: block.startsAt },
        ...(except === undefined ? {} : { NOT: { id: except } }),
      },
    });
    if (held > 0) points.push(await say(block));
  }
  return points;
}
