import type { OfferedPackage } from "@buildproof/workshop";
import Link from "next/link";
import { DateField } from "@/design/date-field";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { Section } from "@/design/sheet";
import { TextField } from "@/design/text-field";
import { startBuildAction } from "./actions";
import { PackageSelect } from "./package-select";

interface StartBuildFormProps {
  readonly vehicleId: string;
  readonly packages: readonly OfferedPackage[];
  readonly currency: string;
}

/** Begins a build for a vehicle. */
export function StartBuildForm({ vehicleId, packages, currency }: StartBuildFormProps) {
  return (
    <Section
      title="Start a build"
      aside={<Link href={`/builds/goal?vehicle=${vehicleId}`}>From a goal: power, trailer, date, price</Link>}
    >
      <ActionForm action={startBuildAction} label="Start a build">
        <input type="hidden" name="vehicleId" value={vehicleId} />
        <TextField
          name="goal"
          label="What the owner wants"
          lines={2}
          placeholder="tow 3.0 t, more pull in the middle"
          isRequired
        />
        <DateField name="wantedBy" label="Wanted by" help="Leave empty when nobody waits for a day." />
        <PackageSelect packages={packages} currency={currency} />
        <div className="form-actions">
          <SubmitButton pendingLabel="Starting">Start the build</SubmitButton>
        </div>
      </ActionForm>
    </Section>
  );
}
