import type { Transaction } from "@buildproof/database";
import type { ActingPerson } from "../core/actor";
import { mayCorrectClock } from "./may-correct-clock";

export type ClockEntry = {
  readonly id: string;
  readonly job: { readonly id: string; readonly number: number };
  readonly personName: string;
  readonly operationName: string;
  readonly startedAt: Date;
  /** Null while it runs. */
  readonly stoppedAt: Date | null;
  readonly minutes: number | null;
  /** Who set its end right, and why. */
  readonly correction: { readonly by: string; readonly because: string; readonly at: Date } | null;
  /** Whether the reader may set its end right. */
  readonly mayCorrect: boolean;
};

type Where = NonNullable<NonNullable<Parameters<Transaction["clockEntry"]["findMany"]>[0]>["where"]>;

type Reader = {
  readonly person: Pick<ActingPerson, "id" | "roles">;
  readonly now: Date;
  readonly timeZone: string;
};

/** Clock entries in order of time, each with the end that counts and how it came about. */
export async function clockEntries(
  tx: Transaction,
  where: Where,
  reader: Reader,
): Promise<readonly ClockEntry[]> {
  const rows = await tx.clockEntry.findMany({
    where,
    orderBy: [{ startedAt: "asc" }, { id: "asc" }],
    include: { job: { select: { id: true, number: true } }, person: { select: { name: true } } },
  });
  const operations = await operationNames(tx, [...new Set(rows.map(({ jobId }) => jobId))]);
  const people = await tx.person.findMany({
    where: { id: { in: rows.flatMap(({ correctedById }) => correctedById ?? []) } },
    select: { id: true, name: true },
  });
  const nameOf = new Map(people.map(({ id, name }) => [id, name]));
  return rows.map((row) => ({
    id: row.id,
    job: row.job,
    personName: row.person.name,
    operationName: operations.get(`${row.jobId} ${row.operationCode}`) ?? row.operationCode,
    startedAt: row.startedAt,
    stoppedAt: row.stoppedAt,
    minutes: row.stoppedAt ? Math.round((row.stoppedAt.getTime() - row.startedAt.getTime()) / 60_000) : null,
    correction: row.correctedAt
      ? {
          by: nameOf.get(row.correctedById ?? "") ?? "",
          because: row.correctedBecause,
          at: row.correctedAt,
        }
      : null,
    mayCorrect: mayCorrectClock(row, reader.person, reader),
  }));
}

/** The names of operations as the cards of these jobs have them. */
async function operationNames(tx: Transaction, jobIds: readonly string[]): Promise<Map<string, string>> {
  const steps = await tx.jobStep.findMany({
    where: { jobId: { in: [...jobIds] } },
    distinct: ["jobId", "operationCode"],
    select: { jobId: true, operationCode: true, operationName: true },
  });
  return new Map(
    steps.map(({ jobId, operationCode, operationName }) => [`${jobId} ${operationCode}`, operationName]),
  );
}
