"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { TextField } from "@/design/text-field";
import { announce } from "@/design/toast";
import type { StepView } from "./card-view";
import { PhotoField } from "./photo-field";
import type { Sent } from "./send-entry";
import type { Press } from "./use-floor-sender";

interface FaultDialogProps {
  readonly jobId: string;
  readonly step: StepView | null;
  readonly press: (press: Omit<Press, "jobId">) => Promise<Sent>;
}

/** Found something: a photo, a sentence, done. The desk takes it from there. */
export function FaultDialog({ jobId, step, press }: FaultDialogProps) {
  const [sentence, setSentence] = useState("");
  const [photo, setPhoto] = useState<File | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [isPending, setPending] = useState(false);

  async function raise(close: () => void) {
    if (isPending) return;
    setPending(true);
    const sent = await press({
      use: "raise-fault",
      label: `Fault: ${sentence}`,
      input: { jobId, ...(step ? { stepId: step.id } : {}), sentence },
      ...(photo ? { photo } : {}),
    });
    setPending(false);
    if (sent.kind === "refused") {
      setRefused(sent.sentence);
      return;
    }
    setSentence("");
    setPhoto(null);
    setRefused(null);
    announce(sent.kind === "saved" ? "The desk sees the fault now." : "The fault is kept on this device.");
    close();
  }

  return (
    <Dialog title="Raise a fault" trigger={<Button>Raise a fault</Button>}>
      {(close) => (
        <form
          className="form"
          aria-label="Raise a fault"
          onSubmit={(event) => {
            event.preventDefault();
            void raise(close);
          }}
        >
          {refused && (
            <div className="notice" data-kind="blocks" role="alert">
              <p className="notice-title">{refused}</p>
            </div>
          )}
          <TextField
            label="What you found"
            lines={3}
            value={sentence}
            onChange={setSentence}
            maxLength={500}
            help="One sentence, as you would say it to the desk."
          />
          <PhotoField label="Photo" onPhoto={setPhoto} />
          <Button type="submit" variant="primary" wide isPending={isPending} pendingLabel="Sending">
            Tell the desk
          </Button>
        </form>
      )}
    </Dialog>
  );
}
