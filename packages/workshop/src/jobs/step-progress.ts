import type { Transaction } from "@buildproof/database";
import { readVisits, type Visit } from "./visits";

export type StepState = {
  readonly id: string;
  readonly position: number;
  readonly operationCode: string;
  readonly operationName: string;
  readonly text: string;
  readonly kind: "tick" | "measurement" | "torque" | "photo" | "serial" | "holdPoint";
  readonly unit: string;
  readonly low: number | null;
  readonly target: number | null;
  readonly high: number | null;
  readonly signer: string;
  readonly visit: Visit;
  /** The newest entry, when it says that the step is done; a reopened step is not. */
  readonly done: {
    readonly value: number | null;
    readonly text: string;
    readonly withinLimits: boolean | null;
    readonly by: string;
    readonly at: Date;
  } | null;
};

/** Every step of a job with the state that its newest entry gives it, in order of work. */
export async function stepStates(tx: Transaction, jobId: string): Promise<readonly StepState[]> {
  const steps = await tx.jobStep.findMany({
    where: { jobId },
    orderBy: { position: "asc" },
    include: {
      entries: {
        orderBy: [{ recordedAt: "desc" }, { id: "desc" }],
        take: 1,
        include: { person: { select: { name: true } } },
      },
    },
  });
  const visits = await readVisits(tx, [...new Set(steps.map(({ operationCode }) => operationCode))]);
  return steps.map(({ entries, ...step }) => {
    const newest = entries[0];
    const { id, position, operationCode, operationName, text, kind, unit, low, target, high, signer } = step;
    const done =
      newest && newest.kind !== "reopened"
        ? {
            value: newest.value,
            text: newest.text,
            withinLimits: newest.withinLimits,
            by: newest.person.name,
            at: newest.at,
          }
        : null;
    const visit = visits.get(operationCode) ?? "main";
    return {
      id,
      position,
      operationCode,
      operationName,
      text,
      kind,
      unit,
      low,
      target,
      high,
      signer,
      visit,
      done,
    };
  });
}

/** The steps that this job itself has to do: an inspection by itself is a job, beside a build it came before. */
export function ownSteps(steps: readonly StepState[]): readonly StepState[] {
  const main = steps.filter(({ visit }) => visit === "main");
  return main.length > 0 ? main : steps;
}

export type OperationProgress = {
  readonly name: string;
  readonly visit: Visit;
  readonly steps: number;
  readonly done: number;
};

/** Steps done of steps there are, by operation in order of work. */
export function progressByOperation(steps: readonly StepState[]): readonly OperationProgress[] {
  const byName = new Map<string, Omit<OperationProgress, "name">>();
  for (const step of steps) {
    const seen = byName.get(step.operationName) ?? { visit: step.visit, steps: 0, done: 0 };
    byName.set(step.operationName, { ...seen, steps: seen.steps + 1, done: seen.done + (step.done ? 1 : 0) });
  }
  return [...byName].map(([name, counts]) => ({ name, ...counts }));
}
