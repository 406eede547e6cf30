"use client";

import { useRouter } from "next/navigation";
import { useCallback, useState } from "react";
import { Button, ButtonLink } from "@/design/button";
import { announce } from "@/design/toast";
import type { CardView } from "./card-view";
import { SavedLine } from "./saved-line";
import { useFloorSender } from "./use-floor-sender";

interface DayClockProps {
  readonly personId: string;
  readonly timeZone: string;
  readonly readAt: string;
  readonly clock: CardView["clock"];
}

/** Where the reader's clock runs, with the button that stops it; and what this device still has to send. */
export function DayClock({ personId, timeZone, readAt, clock }: DayClockProps) {
  const router = useRouter();
  const refreshPage = useCallback(() => router.refresh(), [router]);
  const sender = useFloorSender(personId, refreshPage);
  const [isPending, setPending] = useState(false);

  async function stop(jobId: string) {
    setPending(true);
    const sent = await sender.press({ use: "stop-clock", label: "Clock off", input: {}, jobId });
    setPending(false);
    if (sent.kind === "refused") announce(sent.sentence, { kind: "refused" });
  }

  return (
    <>
      <div className="card-tools">
        <p>
          {clock
            ? `Your clock runs on job ${clock.number} since ${clock.since}${clock.operation ? `, ${clock.operation}` : ""}.`
            : "Your clock is off."}
        </p>
        {clock && (
          <div className="form-actions">
            <Button isPending={isPending} onPress={() => void stop(clock.jobId)}>
              Clock off
            </Button>
            <ButtonLink href={`/floor/jobs/${clock.jobId}`}>{`Back to job ${clock.number}`}</ButtonLink>
          </div>
        )}
      </div>
      {(sender.waiting.length > 0 || sender.ofOthers > 0) && (
        <SavedLine sender={sender} timeZone={timeZone} readAt={readAt} />
      )}
    </>
  );
}
