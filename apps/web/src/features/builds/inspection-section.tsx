"use client";

import type { ShownSheet } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { Checkbox } from "@/design/checkbox";
import { Dialog } from "@/design/dialog";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { kilometres } from "../customers/vehicle-words";
import { recordInspectionAction } from "./actions";
import { dateText } from "./build-words";

interface InspectionSectionProps {
  readonly sheet: ShownSheet;
  readonly mayInspect: boolean;
}

/** The pre-build inspection: before any part is ordered that cannot go back. */
export function InspectionSection({ sheet, mayInspect }: InspectionSectionProps) {
  return (
    <Section title="Pre-build inspection">
      <InspectionWords inspection={sheet.inspection} />
      {mayInspect && (
        <div>
          <Dialog title="Pre-build inspection" trigger={<Button>Record an inspection</Button>}>
            {(close) => <InspectionForm sheet={sheet} onSaved={close} />}
          </Dialog>
        </div>
      )}
    </Section>
  );
}

function InspectionWords({ inspection }: { readonly inspection: ShownSheet["inspection"] }) {
  if (!inspection) {
    return <p>Not done yet. It comes before any part is ordered that cannot go back.</p>;
  }
  const { outcome, stands, doneOn, doneBy, odometerKm, reasons, validUntil, validToOdometerKm } = inspection;
  return (
    <>
      <p>
        <strong>{outcome === "failed" ? "Failed" : stands ? "Passed" : "Passed, and lapsed"}</strong>{" "}
        {dateText(doneOn)} at {kilometres(odometerKm)}, by {doneBy}.
      </p>
      {outcome === "passed" && (
        <p className="fine">
          Valid until {dateText(validUntil)} or {kilometres(validToOdometerKm)}, whichever comes first.
        </p>
      )}
      {reasons.length > 0 && (
        <ul className="sentences">
          {reasons.map((reason) => (
            <li key={reason} className="sentence" data-weight="blocks">
              {reason}
            </li>
          ))}
        </ul>
      )}
      {inspection.note && <p>{inspection.note}</p>}
    </>
  );
}

interface InspectionFormProps {
  readonly sheet: ShownSheet;
  readonly onSaved: () => void;
}

function InspectionForm({ sheet, onSaved }: InspectionFormProps) {
  return (
    <ActionForm action={recordInspectionAction} label="Pre-build inspection" onSaved={onSaved}>
      <input type="hidden" name="buildId" value={sheet.id} />
      <p className="fine">
        Engine cold, battery disconnected where the maker asks for it, wheels chocked. What is recorded stays
        as it is; a correction is another inspection.
      </p>
      <div className="form-row">
        <NumberField
          name="odometerKm"
          label="Odometer"
          unit="km"
          defaultValue={String(sheet.vehicle.odometerKm)}
          isWhole
          isRequired
        />
        <NumberField
          name="leakDownWorstPct"
          label="Leak-down, worst"
          unit="%"
          limits={{ high: 12 }}
          isRequired
        />
      </div>
      <div className="form-row">
        <NumberField
          name="leakDownSpreadPct"
          label="Leak-down, spread"
          unit="points"
          limits={{ high: 6 }}
          isRequired
        />
        <NumberField
          name="fuelTrimWorstPct"
          label="Fuel trim, worst"
          unit="%"
          limits={{ low: -8, high: 8 }}
          isRequired
        />
      </div>
      <Checkbox name="misfireCodes" label="A misfire code is stored" />
      <Checkbox name="coolingSound" label="The cooling system is sound" />
      <TextField name="note" label="Note" lines={2} />
      <SubmitButton pendingLabel="Recording">Record</SubmitButton>
    </ActionForm>
  );
}
