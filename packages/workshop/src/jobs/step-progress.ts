import type { Transaction } from "@buildproof/database";

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
    return { id, position, operationCode, operationName, text, kind, unit, low, target, high, signer, done };
  });
}

export type OperationProgress = { readonly name: string; readonly steps: number; readonly done: number };

/** Steps done of steps there are, by operation in order of work. */
export function progressByOperation(steps: readonly StepState[]): readonly OperationProgress[] {
  const byName = new Map<string, { steps: number; done: number }>();
  for (const step of steps) {
    const seen = byName.get(step.operationName) ?? { steps: 0, done: 0 };
    byName.set(step.operationName, { steps: seen.steps + 1, done: seen.done + (step.done ? 1 : 0) });
  }
  return [...byName].map(([name, counts]) => ({ name, ...counts }));
}
