"use client";

import type { GoalWay } from "@buildproof/workshop";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { startBuildAction } from "./actions";

interface StartFromWayProps {
  readonly way: GoalWay;
  readonly vehicleId: string;
  readonly goal: string;
  readonly wantedBy: string | null;
}

/** Begins the build with everything of this way chosen. */
export function StartFromWay({ way, vehicleId, goal, wantedBy }: StartFromWayProps) {
  return (
    <ActionForm action={startBuildAction} label={`Start ${way.name}`}>
      <input type="hidden" name="vehicleId" value={vehicleId} readOnly />
      <input type="hidden" name="goal" value={goal} readOnly />
      <input type="hidden" name="wantedBy" value={wantedBy ?? ""} readOnly />
      <input type="hidden" name="packageCode" value={way.packageCode ?? "none"} readOnly />
      {way.picked.map((code) => (
        <input key={code} type="hidden" name={`choice.${code}`} value={code} readOnly />
      ))}
      {way.items.map((code) => (
        <input key={code} type="hidden" name="item" value={code} readOnly />
      ))}
      <SubmitButton variant="quiet" pendingLabel="Starting">
        Start this build<span className="visually-hidden">: {way.name}</span>
      </SubmitButton>
    </ActionForm>
  );
}
