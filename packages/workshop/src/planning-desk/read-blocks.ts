import type { Transaction } from "@buildproof/database";
import { instantOfLocal, type LocalTimeProblem } from "./local-time";
import type { PlanResource, TypedBlock, WorkBlock } from "./work-block";

const LONGEST_BLOCK_DAYS = 31;

export type ReadBlocks = { readonly blocks: readonly WorkBlock[]; readonly points: readonly string[] };

/** Reads what was typed: which resource, and which instants it means at the site. Each slip is a sentence. */
export async function readBlocks(
  tx: Transaction,
  typed: readonly TypedBlock[],
  site: { readonly now: Date; readonly timeZone: string },
): Promise<ReadBlocks> {
  const resources = await tx.resource.findMany({
    where: { id: { in: typed.map(({ resourceId }) => resourceId) } },
    include: { person: { select: { active: true, skills: true } } },
  });
  const blocks: WorkBlock[] = [];
  const points: string[] = [];
  for (const block of typed) {
    const resource = resources.find(({ id }) => id === block.resourceId);
    const read = resource ? readTimes(block, resource, site) : unknownResource;
    if (read.ok) blocks.push(read.block);
    else points.push(read.point);
  }
  return { blocks, points };
}

type ReadTime =
  | { readonly ok: true; readonly block: WorkBlock }
  | { readonly ok: false; readonly point: string };

const unknownResource: ReadTime = {
  ok: false,
  point: "One of the resources is not in this workshop. Choose it again from the list.",
};

function readTimes(
  typed: TypedBlock,
  resource: PlanResource,
  { now, timeZone }: { readonly now: Date; readonly timeZone: string },
): ReadTime {
  const no = (why: string): ReadTime => ({ ok: false, point: `${resource.name}: ${why}` });
  const start = instantOfLocal(typed.startsAt, timeZone);
  if (!start.ok) return no(problemWords("start", typed.startsAt, start.problem));
  const end = instantOfLocal(typed.endsAt, timeZone);
  if (!end.ok) return no(problemWords("end", typed.endsAt, end.problem));
  if (end.at <= start.at) return no("it ends before it starts. Check the two times.");
  if (start.at < now) return no("its start is in the past. Choose a time from now on.");
  if (end.at.getTime() - start.at.getTime() > LONGEST_BLOCK_DAYS * 86_400_000)
    return no(`it is longer than ${LONGEST_BLOCK_DAYS} days. Check the two dates.`);
  return { ok: true, block: { resource, startsAt: start.at, endsAt: end.at, work: typed.work } };
}

function problemWords(which: "start" | "end", typed: string, problem: LocalTimeProblem): string {
  const shown = typed.replace("T", " ");
  if (problem === "does-not-exist")
    return `its ${which}, ${shown}, does not exist: the clocks go forward over it that night. Choose an hour earlier or later.`;
  if (problem === "is-double")
    return `its ${which}, ${shown}, comes twice that night, when the clocks go back. Choose a time outside that hour.`;
  return `its ${which} is not a time. Enter day and time, for example 2026-12-08 09:00.`;
}
