import type { Transaction } from "@buildproof/database";
import { ownSteps, type StepState, stepStates } from "../jobs/step-progress";

/** What a job's own record says, as far as hand-over turns on it. */
export type JobRecords = {
  /** Of the job itself: neither of the inspection before it nor of the re-torque visit after it. */
  readonly steps: readonly StepState[];
  readonly verdict: { readonly sentence: string; readonly at: Date } | null;
  readonly openFaults: readonly { readonly id: string; readonly sentence: string }[];
};

export async function readJobRecords(tx: Transaction, jobId: string): Promise<JobRecords> {
  const verdict = await tx.verdict.findFirst({
    where: { jobId },
    orderBy: { at: "desc" },
    select: { sentence: true, at: true },
  });
  const openFaults = await tx.fault.findMany({
    where: { jobId, clearedAt: null },
    orderBy: { raisedAt: "asc" },
    select: { id: true, sentence: true },
  });
  return { steps: ownSteps(await stepStates(tx, jobId)), verdict, openFaults };
}

/** How an obligation stands by the job's own record; null for those that only a file can meet. */
export type RecordStanding = {
  readonly met: boolean;
  readonly sentence: string;
  /** The record itself, as rows of a table with its header first. */
  readonly table: readonly (readonly string[])[];
};

/** By the obligation's code: which part of the record speaks for it. */
export function recordStanding(code: string, records: JobRecords): RecordStanding | null {
  if (code === "torque-record")
    return ofSteps(
      records.steps.filter(({ kind }) => kind === "torque"),
      { one: "torque", many: "torques" },
    );
  if (code === "hold-points-signed")
    return ofSteps(
      records.steps.filter(({ kind }) => kind === "holdPoint"),
      { one: "hold point", many: "hold points" },
    );
  if (code === "readiness-monitors")
    return ofSteps(records.steps.filter(isReadiness), {
      one: "readiness reading",
      many: "readiness readings",
    });
  if (code === "dyno-verdict") return ofVerdict(records.verdict);
  return null;
}

function isReadiness({ unit }: StepState): boolean {
  return unit === "monitors" || unit === "codes";
}

type Words = { readonly one: string; readonly many: string };

function ofSteps(steps: readonly StepState[], words: Words): RecordStanding | null {
  if (steps.length === 0) return null;
  const open = steps.filter(({ done }) => !done || done.withinLimits === false);
  return {
    met: open.length === 0,
    sentence: standingWords(steps, open, words),
    table: [
      ["operation", "step", "value", "unit", "low", "high", "by", "at (UTC)"],
      ...steps.map(({ operationName, text, done, unit, low, high }) => [
        operationName,
        text,
        String(done?.value ?? done?.text ?? ""),
        unit,
        String(low ?? ""),
        String(high ?? ""),
        done?.by ?? "",
        done?.at.toISOString() ?? "",
      ]),
    ],
  };
}

function standingWords(steps: readonly StepState[], open: readonly StepState[], words: Words): string {
  if (open.length > 0) return `${open.length} of ${steps.length} ${words.many} open: ${namesOf(open)}.`;
  return steps.length === 1
    ? `The one ${words.one} is on the job card.`
    : `All ${steps.length} ${words.many} are on the job card.`;
}

const NAMED = 3;

function namesOf(steps: readonly StepState[]): string {
  const first = steps
    .slice(0, NAMED)
    .map(({ operationName, text }) => `${operationName}: ${text.replace(/\.$/, "")}`);
  const more = steps.length - first.length;
  return more > 0 ? `${first.join("; ")}; and ${more} more` : first.join("; ");
}

function ofVerdict(verdict: JobRecords["verdict"]): RecordStanding {
  if (!verdict)
    return {
      met: false,
      sentence: "No verdict is released yet. Release it on the job's dyno page.",
      table: [],
    };
  return {
    met: true,
    sentence: verdict.sentence,
    table: [
      ["verdict", "released (UTC)"],
      [verdict.sentence, verdict.at.toISOString()],
    ],
  };
}
