"use client";

import type { ShownStep } from "./card-state";

interface StepLinesProps {
  readonly steps: readonly ShownStep[];
  readonly from: number;
  readonly to: number;
  readonly label: string;
  readonly onChoose: (stepId: string) => void;
  /** Says above the first step of each operation which it is. */
  readonly withOperations?: boolean;
}

/** Steps as short lines; a hold point is a bar across. */
export function StepLines({ steps, from, to, label, onChoose, withOperations = false }: StepLinesProps) {
  if (to <= from) return null;
  return (
    <ol className="card-lines" aria-label={label} start={from + 1}>
      {steps.slice(from, to).map((step, offset) => {
        const index = from + offset;
        const isFirst = steps[index - 1]?.operation !== step.operation;
        return (
          <li key={step.id} className="card-line" data-kind={step.kind} data-state={step.state}>
            {withOperations && isFirst && <h3 className="card-line-operation">{step.operation}</h3>}
            <button type="button" className="card-line-button" onClick={() => onChoose(step.id)}>
              <span className="card-line-number">{index + 1}</span>
              <span className="card-line-text">
                {step.kind === "holdPoint" && <strong>Hold point. </strong>}
                {step.text}
              </span>
              <span className="card-line-state">{lineWords(step)}</span>
            </button>
          </li>
        );
      })}
    </ol>
  );
}

function lineWords(step: ShownStep): string {
  if (step.isOnDevice) return "on this device";
  if (step.state === "outside") return `${step.words}: outside, a fault`;
  if (step.state === "done") return step.words;
  if (step.kind === "holdPoint") return "not signed";
  return step.limits || "open";
}
