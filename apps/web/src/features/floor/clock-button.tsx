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
    <div className="card-clock">
      <Button isPending={isPending} onPress={() => (isOnThis ? stop() : start(false))}>
        {isOnThis ? "Clock off" : "Clock on"}
      </Button>
      <span>{clockWords(clock, isOnThis)}</span>
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
    </div>
  );
}

function clockWords(clock: CardView["clock"], isOnThis: boolean): string {
  if (!clock) return "Your clock is off.";
  const operation = clock.operation ? `, ${clock.operation}` : "";
  return isOnThis
    ? `On since ${clock.since}${operation}`
    : `Running on job ${clock.number} since ${clock.since}`;
}
