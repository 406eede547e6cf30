"use client";

import { useId } from "react";
import { Button } from "@/design/button";
import { Disclosure } from "@/design/disclosure";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { bookAction } from "./actions";
import { BookingBlock, ReasonField } from "./booking-block";
import { type BookableJob, type DraftBlock, type ResourceChoice, withNewBlock } from "./booking-draft";

interface BookingFormProps {
  readonly job: BookableJob;
  readonly resources: readonly ResourceChoice[];
  readonly draft: readonly DraftBlock[];
  readonly onDraft: (draft: readonly DraftBlock[]) => void;
  readonly onBooked?: () => void;
}

/** Books several stretches at once: all of them, or none with every reason. */
export function BookingForm({ job, resources, draft, onDraft, onBooked }: BookingFormProps) {
  const listId = useId();
  const passable = job.points.filter(({ safety }) => !safety);
  return (
    <ActionForm
      action={bookAction}
      label={`Book time for ${job.label}`}
      {...(onBooked ? { onSaved: onBooked } : {})}
    >
      <input type="hidden" name="jobId" value={job.id} readOnly />
      <datalist id={listId}>
        {job.work.map(({ name }) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <div className="booking-blocks">
        {draft.map((block, index) => (
          <BookingBlock
            key={block.key}
            block={block}
            resources={resources}
            listId={listId}
            onChange={(changed) => onDraft(draft.map((each) => (each.key === block.key ? changed : each)))}
            onRemove={index > 2 ? () => onDraft(draft.filter(({ key }) => key !== block.key)) : null}
          />
        ))}
      </div>
      {passable.length > 0 && (
        <Disclosure title="Override a point of the gate">
          <div className="stack">
            {passable.map(({ point, title }) => (
              <ReasonField key={point} point={point} title={title} />
            ))}
          </div>
        </Disclosure>
      )}
      <div className="form-actions">
        <SubmitButton pendingLabel="Booking">Book this time</SubmitButton>
        <Button onPress={() => onDraft(withNewBlock(draft))}>Add another block</Button>
      </div>
    </ActionForm>
  );
}
