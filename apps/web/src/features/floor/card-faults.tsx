"use client";

import { Button } from "@/design/button";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { SentenceList } from "@/design/sentence-list";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { clearFaultAction } from "./actions";
import type { FaultView } from "./card-view";
import { Photos } from "./photos";

interface CardFaultsProps {
  readonly faults: readonly FaultView[];
  readonly isManager: boolean;
}

/** What was found on this job, open ones first. */
export function CardFaults({ faults, isManager }: CardFaultsProps) {
  if (faults.length === 0) return null;
  const ordered = [...faults].sort((a, b) => Number(a.settled !== null) - Number(b.settled !== null));
  return (
    <Section title="Faults">
      <SentenceList
        label="Faults"
        sentences={ordered.map((fault) => ({
          id: fault.id,
          sentence: (
            <>
              {fault.sentence}
              <Photos addresses={fault.photo ? [fault.photo] : []} of={fault.sentence} />
            </>
          ),
          note: fault.settled ? `${fault.raised}. Settled: ${fault.settled}` : `${fault.raised}. Open.`,
          weight: fault.settled ? "ordinary" : "blocks",
          ...(isManager && !fault.settled ? { action: <SettleFault fault={fault} /> } : {}),
        }))}
      />
    </Section>
  );
}

function SettleFault({ fault }: { readonly fault: FaultView }) {
  return (
    <Dialog title="Settle the fault" trigger={<Button>Settle</Button>}>
      {(close) => (
        <ActionForm action={clearFaultAction} label="Settle the fault" onSaved={close}>
          <p>{fault.sentence}</p>
          <input type="hidden" name="faultId" value={fault.id} readOnly />
          <TextField
            label="How it was settled"
            name="because"
            lines={3}
            help="Recorded with your name: put right, or told to the customer and left, and when."
          />
          <SubmitButton>Settle it</SubmitButton>
        </ActionForm>
      )}
    </Dialog>
  );
}
