"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { EmptyState } from "@/design/empty-state";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Section } from "@/design/sheet";
import { cancelBookingAction, moveBookingAction } from "@/features/plan/actions";
import { BookingBlock } from "@/features/plan/booking-block";
import {
  type BookableJob,
  type DraftBlock,
  firstDraft,
  type ResourceChoice,
  type ResourceKind,
} from "@/features/plan/booking-draft";
import { BookingForm } from "@/features/plan/booking-form";
import { localText, spanText } from "@/features/plan/local-text";

export interface JobBooking {
  readonly id: string;
  readonly resourceId: string;
  readonly resource: string;
  readonly kind: ResourceKind;
  readonly work: string;
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly isOver: boolean;
}

interface BookingsSectionProps {
  readonly job: BookableJob;
  readonly bookings: readonly JobBooking[];
  readonly resources: readonly ResourceChoice[];
  readonly timeZone: string;
  readonly today: string;
  /** Whether this person books, and the job still takes time. */
  readonly mayBook: boolean;
}

/** The time booked for a job, and the form that books more. */
export function BookingsSection(props: BookingsSectionProps) {
  const { job, bookings, resources, timeZone, today, mayBook } = props;
  const [draft, setDraft] = useState(() => firstDraft(today, job.work));
  return (
    <Section title="Bookings" id="bookings">
      {bookings.length === 0 ? (
        <EmptyState sentence="No time is booked yet." />
      ) : (
        <ol className="sentences" aria-label="Bookings">
          {bookings.map((booking) => (
            <li key={booking.id} className="sentence">
              <div>
                <strong>{booking.resource}</strong>, {spanText(booking.startsAt, booking.endsAt, timeZone)}
                <span className="sentence-note">{booking.work}</span>
              </div>
              {mayBook && !booking.isOver && (
                <div className="sentence-action">
                  <MoveBooking booking={booking} resources={resources} timeZone={timeZone} />
                  <CancelBooking booking={booking} timeZone={timeZone} />
                </div>
              )}
            </li>
          ))}
        </ol>
      )}
      {mayBook && (
        <>
          <h3 id="book">Book time</h3>
          <BookingForm
            job={job}
            resources={resources}
            draft={draft}
            onDraft={setDraft}
            onBooked={() => setDraft(firstDraft(today, job.work))}
          />
        </>
      )}
    </Section>
  );
}

interface BookingProps {
  readonly booking: JobBooking;
  readonly timeZone: string;
}

function MoveBooking({
  booking,
  resources,
  timeZone,
}: BookingProps & { readonly resources: readonly ResourceChoice[] }) {
  const [block, setBlock] = useState<DraftBlock>({
    key: "0",
    kind: booking.kind,
    resourceId: booking.resourceId,
    startsAt: localText(booking.startsAt, timeZone),
    endsAt: localText(booking.endsAt, timeZone),
    work: booking.work,
  });
  return (
    <Dialog
      title={`Move ${booking.resource}`}
      size="wide"
      trigger={<Button aria-label={`Move ${booking.resource}, ${booking.work}`}>Move</Button>}
    >
      {(close) => (
        <ActionForm action={moveBookingAction} label={`Move ${booking.resource}`} onSaved={close}>
          <input type="hidden" name="bookingId" value={booking.id} readOnly />
          <div className="booking-blocks">
            <BookingBlock
              block={block}
              resources={resources}
              listId={`move-${booking.id}`}
              onChange={setBlock}
              onRemove={null}
            />
          </div>
          <div className="form-actions">
            <SubmitButton pendingLabel="Moving">Move the booking</SubmitButton>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}

function CancelBooking({ booking, timeZone }: BookingProps) {
  return (
    <Dialog
      title="Cancel this booking?"
      isAlert
      trigger={<Button aria-label={`Cancel ${booking.resource}, ${booking.work}`}>Cancel</Button>}
    >
      {(close) => (
        <ActionForm action={cancelBookingAction} label="Cancel the booking" onSaved={close}>
          <input type="hidden" name="bookingId" value={booking.id} readOnly />
          <p>
            {`${booking.resource}, ${spanText(booking.startsAt, booking.endsAt, timeZone)}: the time is free for others at once.`}
          </p>
          <div className="form-actions">
            <SubmitButton variant="danger" pendingLabel="Cancelling">
              Cancel the booking
            </SubmitButton>
            <Button onPress={close}>Keep it</Button>
          </div>
        </ActionForm>
      )}
    </Dialog>
  );
}
