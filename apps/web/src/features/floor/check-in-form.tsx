"use client";

import { Checkbox } from "@/design/checkbox";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { RadioGroup } from "@/design/radio-group";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { checkInAction } from "./actions";
import { CheckInPhotos } from "./check-in-photos";

interface CheckInFormProps {
  readonly job: {
    readonly jobId: string;
    readonly knownOdometerKm: number;
    readonly isDiesel: boolean;
    readonly usualOctane: number | null;
    readonly needsFuelSample: boolean;
    readonly notices: readonly {
      readonly code: string;
      readonly sentence: string;
      readonly source: string;
    }[];
  };
}

const grades = [
  { id: "91", label: "91" },
  { id: "95", label: "95" },
  { id: "98", label: "98" },
];

/** Taking a vehicle in: first what is said, then what is seen. */
export function CheckInForm({ job }: CheckInFormProps) {
  const { jobId, notices, knownOdometerKm, isDiesel, usualOctane, needsFuelSample } = job;
  return (
    <ActionForm action={checkInAction} label="Check in">
      <input type="hidden" name="jobId" value={jobId} readOnly />
      <Section title="Say, then tick">
        <div className="told">
          {notices.map(({ code, sentence, source }) => (
            <Checkbox key={code} name="told" value={code} label={sentence} note={source} />
          ))}
        </div>
      </Section>
      <Section title="Walk round">
        <div className="form">
          <TextField
            label="Condition"
            name="condition"
            lines={3}
            isRequired
            help="Every mark you see; “no marks” if there are none."
          />
          <CheckInPhotos />
        </div>
      </Section>
      <Section title="Read and count">
        <div className="form">
          <div className="form-row">
            <NumberField
              label="Odometer"
              name="odometerKm"
              unit="km"
              isWhole
              isRequired
              help={`Last reading ${knownOdometerKm.toLocaleString("en-AU")} km`}
            />
            <NumberField
              label="Keys"
              name="keys"
              isWhole
              isRequired
              help="All of them: the immobiliser wants every one."
            />
          </div>
          {!isDiesel && (
            <RadioGroup
              label="Fuel grade in the tank"
              name="fuelOctane"
              options={grades}
              orientation="horizontal"
              {...(usualOctane === null ? {} : { help: `Usually ${usualOctane}. Ask what was filled last.` })}
            />
          )}
          {!isDiesel && (
            <NumberField
              label="Ethanol content"
              name="ethanolPct"
              unit="% by volume"
              isRequired={needsFuelSample}
              help={
                needsFuelSample
                  ? "From a fuel sample. Fuel vapour burns: no flame or spark, extinguisher at hand, catch what drips."
                  : "If a sample was drawn."
              }
            />
          )}
        </div>
      </Section>
      <SubmitButton wide pendingLabel="Taking it in">
        Take the vehicle in
      </SubmitButton>
    </ActionForm>
  );
}
