import { spanWords } from "./time-words";
import type { WorkBlock } from "./work-block";

type Covered = Pick<WorkBlock, "resource" | "startsAt" | "endsAt">;

/** Dyno time of a job during which none of its people can run the dyno: the cell is never run by anybody else. */
export function dynoWithoutOperator(blocks: readonly Covered[]): readonly Covered[] {
  const operators = blocks.filter(
    ({ resource }) =>
      resource.kind === "person" && (resource.person?.skills.includes("dyno-operator") ?? false),
  );
  return blocks.filter((block) => block.resource.kind === "dyno" && !isCovered(block, operators));
}

/** Whether the stretch is covered from end to end, by one operator or by several in turn. */
function isCovered(stretch: Covered, by: readonly Covered[]): boolean {
  let reached = stretch.startsAt.getTime();
  const inTurn = [...by].sort((a, b) => a.startsAt.getTime() - b.startsAt.getTime());
  for (const { startsAt, endsAt } of inTurn) {
    if (startsAt.getTime() > reached) break;
    reached = Math.max(reached, endsAt.getTime());
  }
  return reached >= stretch.endsAt.getTime();
}

export function dynoAloneSentence({ resource, startsAt, endsAt }: Covered, timeZone: string): string {
  return `${resource.name}, ${spanWords(startsAt, endsAt, timeZone)}: no dyno operator is booked on this job for all of that time. Book one with it.`;
}
