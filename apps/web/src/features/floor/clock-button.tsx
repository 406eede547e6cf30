"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { announce } from "@/design/toast";
import type { CardView } from "./card-view";
import type { Sent } from "./send-entry";
import type { Press } from "./use-floor-sender";

interface ClockButtonProps {
  readonly card: Pick<CardView, "jobId" | "clock">;
  readonly press: (press: Omit<Press, "jobId">) => Promise<Sent>;
}

/** One button: on this job, or off it. Switching from another job asks first. */
export function ClockButton({ card, press }: ClockButtonProps) {
  const { clock, jobId } = card;
  const [asks, setAsks] = useState<string | null>(null);
  const [isPending, setPending] = useState(false);
  const isOnThis = clock?.jobId === jobId;

  async function send(pressed: Omit<Press, "jobId">) {
    setPending(true);
    const sent = await press(pressed);
    setPending(false);
    if (sent.kind === "refused" && sent.code === "already-clocked") setAsks(sent.sentence);
    else if (sent.kind === "refused") announce(sent.sentence, { kind: "refused" });
    else setAsks(null);
  }
  const start = (switches: boolean) =>
    send({ use: "start-clock", label: "Clock on", input: { jobId, ...(switches ? { switches } : {}) } });
  const stop = () => send({ use: "stop-clock", label: "Clock off", input: {} });

  return (
    <>
      <Button isPending={isPending} onPress={() => (isOnThis ? stop() : start(false))}>
        {isOnThis ? "Clock off" : "Clock on"}
      </Button>
      <Dialog
        title="Switch the clock?"
        isOpen={asks !== null}
        onOpenChange={(open) => !open && setAsks(null)}
        isAlert
      >
        <div className="form">
          <p>{asks}</p>
          <div className="form-actions">
            <Button variant="primary" isPending={isPending} onPress={() => start(true)}>
              Switch to this job
            </Button>
            <Button onPress={() => setAsks(null)}>Leave it running there</Button>
          </div>
        </div>
      </Dialog>
    </>
  );
}

/** Where the reader's clock is, in a sentence. */
export function clockWords({ jobId, clock }: ClockButtonProps["card"]): string {
  if (!clock) return "Your clock is off.";
  return clock.jobId === jobId
    ? `Your clock is on since ${clock.since}${clock.operation ? `, ${clock.operation}` : ""}.`
    : `Your clock runs on job ${clock.number} since ${clock.since}.`;
}
