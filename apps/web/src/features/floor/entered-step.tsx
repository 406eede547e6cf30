"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { Notice } from "@/design/notice";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";
import type { ShownStep } from "./card-state";
import type { CardView } from "./card-view";
import { Photos } from "./photos";
import type { Sent } from "./send-entry";
import { StepForm } from "./step-form";
import type { Press } from "./use-floor-sender";

interface EnteredStepProps {
  readonly card: CardView;
  readonly step: ShownStep;
  readonly press: (press: Omit<Press, "jobId">) => Promise<Sent>;
  readonly onNext: () => void;
}

/** A step that is entered: what stands there, by whom, and the way to undo it. */
export function EnteredStep({ card, step, press, onNext }: EnteredStepProps) {
  const mayChange = card.mayWrite && card.isHere;
  const who = step.isOnDevice
    ? "on this device, not yet at the workshop"
    : [step.by, step.at].filter(Boolean).join(", ");
  return (
    <>
      <p className="card-step-entered">
        <strong>{step.words || "entered"}</strong> {who}
      </p>
      {step.note && <p>{step.note}</p>}
      <Photos addresses={step.photos} of={step.text} />
      {step.state === "outside" && (
        <Notice title="Outside its limits: a fault until it is entered again within them." kind="blocks" />
      )}
      {mayChange && (step.state === "outside" || step.kind === "photo") && !step.isOnDevice && (
        <StepForm step={step} press={press} onDone={onNext} />
      )}
      <div className="form-actions">
        <Button onPress={onNext}>Next step</Button>
        {mayChange && <UndoDialog step={step} press={press} />}
      </div>
    </>
  );
}

function UndoDialog({ step, press }: Pick<EnteredStepProps, "step" | "press">) {
  const [because, setBecause] = useState("");
  const [sentence, setSentence] = useState<string | null>(null);
  const undo = async (close: () => void) => {
    const sent = await press({
      use: "reopen-step",
      label: `Undo: ${step.text}`,
      input: { stepId: step.id, because },
    });
    if (sent.kind === "refused") {
      setSentence(sent.sentence);
      return;
    }
    announce("The step is open again.");
    close();
  };
  return (
    <Dialog title="Open this step again" trigger={<Button>Undo</Button>}>
      {(close) => (
        <div className="form">
          <p>
            What was entered stays on the record. A signature that was given after this step falls and is
            asked for again.
          </p>
          {sentence && (
            <div className="notice" data-kind="blocks" role="alert">
              <p className="notice-title">{sentence}</p>
            </div>
          )}
          <TextField label="Why" lines={2} value={because} onChange={setBecause} />
          <div className="form-actions">
            <Button variant="danger" onPress={() => undo(close)}>
              Open it again
            </Button>
            <Button onPress={close}>Leave it</Button>
          </div>
        </div>
      )}
    </Dialog>
  );
}
