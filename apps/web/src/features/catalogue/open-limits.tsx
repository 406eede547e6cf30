"use client";

import type { ProofReport } from "@buildproof/workshop";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { SentenceList } from "@/design/sentence-list";
import { openExampleAction } from "./proof-actions";

interface OpenLimitsProps {
  readonly vehicles: ProofReport["vehicles"];
  /** The sheet knows the catalogue that is sold from, not a draft. */
  readonly isDraft: boolean;
}

/** Limits that a build which can be sold exceeds, each with that build. */
export function OpenLimits({ vehicles, isDraft }: OpenLimitsProps) {
  const lines = vehicles.flatMap((vehicle) =>
    vehicle.limits
      .filter(({ verdict }) => verdict === "exceeded" || verdict === "set-aside")
      .map((line) => ({ ...line, vehicle })),
  );
  return (
    <SentenceList
      label="Limits that can be exceeded"
      sentences={lines.map(({ limit, verdict, sentence, example, name, vehicle }) => ({
        id: `${vehicle.code} ${limit}`,
        sentence,
        note: vehicle.name,
        weight: verdict === "exceeded" ? "blocks" : "ordinary",
        action:
          example && !isDraft ? (
            <ActionForm action={openExampleAction} label={`${name}, ${vehicle.name}`}>
              <input type="hidden" name="modelCode" value={vehicle.code} />
              <input type="hidden" name="limit" value={limit} />
              {example.map((code) => (
                <input key={code} type="hidden" name="item" value={code} />
              ))}
              <SubmitButton variant="quiet" pendingLabel="Opening">
                Open this build
              </SubmitButton>
            </ActionForm>
          ) : undefined,
      }))}
    />
  );
}
