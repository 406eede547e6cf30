"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useMemo, useState } from "react";
import { ButtonLink } from "@/design/button";
import { Notice } from "@/design/notice";
import { CardFaults } from "./card-faults";
import { heldAt, nextIndex, shownSteps } from "./card-state";
import type { CardView } from "./card-view";
import { ClockButton } from "./clock-button";
import { FaultDialog } from "./fault-dialog";
import { PresentStep } from "./present-step";
import { SavedLine } from "./saved-line";
import type { Sent } from "./send-entry";
import { StepLines } from "./step-lines";
import { type Press, useFloorSender } from "./use-floor-sender";

const LINES_BEFORE = 2;
const LINES_AFTER = 4;

/** The job card in the hand: one step fills the screen, its neighbours are short lines above and below. */
export function JobCard({ card, openAt }: { readonly card: CardView; readonly openAt?: string }) {
  const router = useRouter();
  const refreshPage = useCallback(() => router.refresh(), [router]);
  const sender = useFloorSender(card.reader.id, refreshPage);
  const [justSaved, setJustSaved] = useState<ReadonlySet<string>>(new Set());
  const steps = useMemo(
    () => shownSteps(card.steps, sender.waiting, justSaved),
    [card.steps, sender.waiting, justSaved],
  );
  const [chosen, setChosen] = useState<string | null>(openAt ?? null);

  // What the workshop says now includes what was just saved.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the reading itself is what changes.
  useEffect(() => setJustSaved(new Set()), [card.readAt]);

  const index = useMemo(() => {
    const found = steps.findIndex(({ id }) => id === chosen);
    return found >= 0 ? found : nextIndex(steps, 0);
  }, [steps, chosen]);
  const step = steps[index];

  const press = useCallback(
    async (pressed: Omit<Press, "jobId">): Promise<Sent> => {
      const sent = await sender.press({ ...pressed, jobId: card.jobId });
      const { stepId } = pressed.input;
      if (sent.kind === "saved" && pressed.use === "record-step" && typeof stepId === "string")
        setJustSaved((before) => new Set([...before, stepId]));
      return sent;
    },
    [card.jobId, sender.press],
  );

  const goOn = useCallback(() => {
    const rest = steps.findIndex(({ state }, at) => at > index && state === "open");
    const next = steps[rest >= 0 ? rest : nextIndex(steps, index + 1)];
    setChosen(next?.id ?? null);
  }, [steps, index]);

  return (
    <div className="card">
      {card.mayWrite && card.isHere && (
        <div className="card-tools">
          <ClockButton card={card} press={press} />
          <FaultDialog jobId={card.jobId} step={step ?? null} press={press} />
        </div>
      )}
      {card.inspection && <Notice title={card.inspection} kind="blocks" />}
      {step ? (
        <>
          <StepLines
            steps={steps}
            from={Math.max(0, index - LINES_BEFORE)}
            to={index}
            onChoose={setChosen}
            label="Before"
          />
          <PresentStep
            key={step.id}
            card={card}
            step={step}
            number={index + 1}
            held={heldAt(steps, index)}
            press={press}
            onDone={goOn}
            onHold={setChosen}
          />
          <StepLines
            steps={steps}
            from={index + 1}
            to={Math.min(steps.length, index + 1 + LINES_AFTER)}
            onChoose={setChosen}
            label="After"
          />
          {steps.every(({ state }) => state !== "open") && <AllDone jobId={card.jobId} />}
        </>
      ) : (
        <Notice title="This job has no steps on its card." />
      )}
      <CardFaults faults={card.faults} isManager={card.isManager} />
      <details className="card-all">
        <summary>All {steps.length} steps</summary>
        <StepLines
          steps={steps}
          from={0}
          to={steps.length}
          onChoose={(id) => {
            setChosen(id);
            window.scrollTo({ top: 0 });
          }}
          label="All steps"
          withOperations
        />
      </details>
      <SavedLine sender={sender} timeZone={card.timeZone} readAt={card.readAt} />
    </div>
  );
}

function AllDone({ jobId }: { readonly jobId: string }) {
  return (
    <Notice title="Every step on this card is entered." kind="saved">
      <p>Look through the faults below, then say on the job's page that the work is done.</p>
      <p>
        <ButtonLink href={`/jobs/${jobId}`}>Go to the job</ButtonLink>
      </p>
    </Notice>
  );
}
