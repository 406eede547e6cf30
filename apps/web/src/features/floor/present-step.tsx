"use client";

import { Button } from "@/design/button";
import { Notice } from "@/design/notice";
import type { ShownStep } from "./card-state";
import type { CardView } from "./card-view";
import { EnteredStep } from "./entered-step";
import { HoldPointForm } from "./hold-point-form";
import type { Sent } from "./send-entry";
import { StepForm } from "./step-form";
import type { Press } from "./use-floor-sender";

interface PresentStepProps {
  readonly card: CardView;
  readonly step: ShownStep;
  readonly number: number;
  /** The unsigned hold point in the way. */
  readonly held: ShownStep | null;
  readonly press: (press: Omit<Press, "jobId">) => Promise<Sent>;
  readonly onDone: () => void;
  readonly onHold: (stepId: string) => void;
}

/** The step in hand: what to be careful about, what to have ready, what to do, and one wide button. */
export function PresentStep(props: PresentStepProps) {
  const { card, step, number, held } = props;
  return (
    <section className="card-step" data-kind={step.kind} aria-labelledby="present-step">
      <p className="card-step-place">
        Step {number} of {card.steps.length} · {step.operation}
      </p>
      {step.cautions.length > 0 && step.state === "open" && (
        <Notice title="First" kind="blocks">
          {step.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
          <p className="fine">Local rules and the maker's instruction come before this card.</p>
        </Notice>
      )}
      {step.oneUsePart && step.state === "open" && (
        <p className="card-step-part">
          <strong>New on the trolley: {step.oneUsePart}.</strong> Used once; the old one does not go back.
        </p>
      )}
      <h2 id="present-step" className="card-step-text">
        {step.kind === "holdPoint" && "Hold point. "}
        {step.text}
      </h2>
      {step.limits && (
        <p className="card-step-limits" role="note" aria-label="Limits">
          {step.target !== null && step.target !== step.low && (
            <>
              <span className="card-step-target">{step.target}</span> {step.unit},{" "}
            </>
          )}
          {step.limits}
        </p>
      )}
      <WhatToDo {...props} held={held} />
    </section>
  );
}

function WhatToDo({ card, step, held, press, onDone, onHold }: PresentStepProps) {
  if (step.state !== "open") return <EnteredStep card={card} step={step} press={press} onNext={onDone} />;
  if (!card.isHere)
    return <Notice title={`The vehicle is ${card.statusWords}: nothing is entered on its card now.`} />;
  if (!card.mayWrite) return <Notice title="Technicians and managers enter what is done here." />;
  if (held) {
    return (
      <Notice
        title={`Stop: nothing crosses the hold point “${held.text}” before it is signed.`}
        kind="blocks"
      >
        <p>
          <Button onPress={() => onHold(held.id)}>Go to the hold point</Button>
        </p>
      </Notice>
    );
  }
  if (step.kind === "holdPoint") return <HoldPointForm card={card} step={step} />;
  return <StepForm step={step} press={press} onDone={onDone} />;
}
