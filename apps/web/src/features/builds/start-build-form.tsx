import { DateField } from "@/design/date-field";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Select } from "@/design/select";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { startBuildAction } from "./actions";

interface StartBuildFormProps {
  readonly vehicleId: string;
  readonly packages: readonly { readonly code: string; readonly name: string; readonly outcome: string }[];
}

/** Begins a build for a vehicle. */
export function StartBuildForm({ vehicleId, packages }: StartBuildFormProps) {
  return (
    <Section title="Start a build">
      <ActionForm action={startBuildAction} label="Start a build">
        <input type="hidden" name="vehicleId" value={vehicleId} />
        <TextField
          name="goal"
          label="What the owner wants"
          lines={2}
          placeholder="tow 3.0 t, more pull in the middle"
          isRequired
        />
        <div className="form-row">
          <DateField name="wantedBy" label="Wanted by" help="Leave empty when nobody waits for a day." />
          <Select
            name="packageCode"
            label="Begin with"
            defaultValue="none"
            options={[
              { id: "none", label: "Nothing chosen" },
              ...packages.map(({ code, name, outcome }) => ({ id: code, label: name, note: outcome })),
            ]}
          />
        </div>
        <div className="form-actions">
          <SubmitButton pendingLabel="Starting">Start the build</SubmitButton>
        </div>
      </ActionForm>
    </Section>
  );
}
