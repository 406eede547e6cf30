"use client";

import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { ButtonLink } from "@/design/button";
import { Notice } from "@/design/notice";
import { SheetHead } from "@/design/sheet";
import { announce } from "@/design/toast";
import { CardFaults } from "./card-faults";
import {
  changesThePage,
  heldAt,
  type JustSaved,
  newerThanReading,
  nextIndex,
  shownSteps,
  withSaved,
} from "./card-state";
import type { CardView } from "./card-view";
import { ClockButton, clockWords } from "./clock-button";
import { FaultDialog } from "./fault-dialog";
import type { FloorEntry } from "./floor-entry";
import { PresentStep } from "./present-step";
import { SavedLine } from "./saved-line";
import type { Sent } from "./send-entry";
import { StepLines } from "./step-lines";
import { type Press, useFloorSender } from "./use-floor-sender";
import { useReadAnew } from "./use-read-anew";

const LINES_BEFORE = 1;
const LINES_AFTER = 4;

/** The job card in the hand: one step fills the screen, its neighbours are short lines above and below. */
export function JobCard({ card, openAt }: { readonly card: CardView; readonly openAt?: string }) {
  const readAnew = useReadAnew();
  const [justSaved, setJustSaved] = useState<JustSaved>(new Map());
  const takeUp = useCallback(
    (saved: readonly FloorEntry[]) => {
      setJustSaved((before) => withSaved(before, saved, Date.now()));
      readAnew(saved.some((entry) => changesThePage(entry, card.steps)));
    },
    [card.steps, readAnew],
  );
  const sender = useFloorSender(card.reader.id, takeUp);
  const steps = useMemo(
    () => shownSteps(card.steps, sender.waiting, justSaved),
    [card.steps, sender.waiting, justSaved],
  );
  const [chosen, setChosen] = useState<string | null>(openAt ?? null);

  // What the workshop says now includes what was saved before it was asked.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the reading itself is what changes.
  useEffect(() => setJustSaved((before) => newerThanReading(before, Date.now())), [card.readAt]);

  const index = useMemo(() => {
    const found = steps.findIndex(({ id }) => id === chosen);
    return found >= 0 ? found : nextIndex(steps, 0);
  }, [steps, chosen]);
  const step = steps[index];
  const mayWork = card.mayWrite && card.isHere;
  const [showsAll, setShowsAll] = useState(false);

  const press = useCallback(
    (pressed: Omit<Press, "jobId">): Promise<Sent> => sender.press({ ...pressed, jobId: card.jobId }),
    [card.jobId, sender.press],
  );

  const goOn = useCallback(() => {
    const rest = steps.findIndex(({ state }, at) => at > index && state === "open");
    const next = steps[rest >= 0 ? rest : nextIndex(steps, index + 1)];
    setChosen(next?.id ?? null);
  }, [steps, index]);

  // The signature comes with the page read anew, not by a press on this card.
  const seen = useRef(step);
  useEffect(() => {
    const before = seen.current;
    seen.current = step;
    const isSigned = before?.id === step?.id && before?.state === "open" && step?.state === "done";
    if (!isSigned || step?.kind !== "holdPoint") return;
    announce(`Signed by ${step.by}.`);
    goOn();
  }, [step, goOn]);

  return (
    <div className="card">
      <SheetHead
        title={`${card.plate}, job ${card.number}`}
        lead={
          <>
            {card.model}
            {card.packageName && `, ${card.packageName}`}. Stands: {card.stands}; {card.statusWords}.{" "}
            {mayWork && clockWords(card)}
          </>
        }
        actions={
          <>
            {mayWork && <ClockButton card={card} press={press} />}
            {mayWork && <FaultDialog jobId={card.jobId} step={step ?? null} press={press} />}
            <span className="card-print">
              <ButtonLink href={`/jobs/${card.jobId}/card`}>Print</ButtonLink>
            </span>
          </>
        }
      />
      {card.status === "booked" && (
        <Notice title="This vehicle is not checked in yet.">
          <p>
            <ButtonLink variant="primary" href={`/floor/jobs/${card.jobId}/check-in`}>
              Check in
            </ButtonLink>
          </p>
        </Notice>
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
      <details
        className="card-all"
        open={showsAll}
        onToggle={(event) => setShowsAll(event.currentTarget.open)}
      >
        <summary>All {steps.length} steps</summary>
        {showsAll && (
          <StepLines
            steps={steps}
            from={0}
            to={steps.length}
            onChoose={(id) => {
              setChosen(id);
              setShowsAll(false);
              window.scrollTo({ top: 0 });
            }}
            label="All steps"
            withOperations
          />
        )}
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
