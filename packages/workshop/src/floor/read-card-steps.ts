import type { Transaction } from "@buildproof/database";
import type { CardStep, StepEntered } from "./card-step";

type Entry = {
  readonly kind: string;
  readonly value: number | null;
  readonly text: string;
  readonly photoSha256: string | null;
  readonly withinLimits: boolean | null;
  readonly at: Date;
  readonly person: { readonly id: string; readonly name: string };
};

/** The cards of several jobs at once, each in order of work. */
export async function readCards(
  tx: Transaction,
  jobIds: readonly string[],
): Promise<ReadonlyMap<string, readonly CardStep[]>> {
  const rows = await tx.jobStep.findMany({
    where: { jobId: { in: [...jobIds] } },
    orderBy: [{ jobId: "asc" }, { position: "asc" }],
    include: {
      entries: {
        orderBy: [{ recordedAt: "asc" }, { id: "asc" }],
        include: { person: { select: { id: true, name: true } } },
      },
    },
  });
  const cards = new Map<string, CardStep[]>(jobIds.map((id) => [id, []]));
  for (const { entries, jobId, workshopId: _, ...step } of rows) {
    cards.get(jobId)?.push({ ...step, ...stateOf(entries) });
  }
  return cards;
}

export async function readCardSteps(tx: Transaction, jobId: string): Promise<readonly CardStep[]> {
  return (await readCards(tx, [jobId])).get(jobId) ?? [];
}

function stateOf(entries: readonly Entry[]): Pick<CardStep, "state" | "entered" | "workedBy" | "photos"> {
  const opened = entries.findLastIndex(({ kind }) => kind === "reopened");
  const standing = entries.slice(opened + 1);
  const newest = standing.at(-1);
  const entered = newest ? enteredOf(newest) : null;
  return {
    state: entered === null ? "open" : entered.withinLimits === false ? "outside" : "done",
    entered,
    workedBy: [...new Set(standing.map(({ person }) => person.id))],
    photos: standing.flatMap(({ photoSha256 }) => photoSha256 ?? []),
  };
}

function enteredOf({ kind, value, text, withinLimits, at, person }: Entry): StepEntered {
  return { kind: kindOf(kind), value, text, withinLimits, at, by: { id: person.id, name: person.name } };
}

function kindOf(kind: string): StepEntered["kind"] {
  if (kind === "done" || kind === "value" || kind === "photo" || kind === "signed") return kind;
  throw new Error(`a step entry of an unknown kind: ${kind}`);
}
