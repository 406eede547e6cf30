import { DateField } from "@/design/date-field";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { TextField } from "@/design/text-field";
import { handOverAction } from "./actions";

interface HandOverFormProps {
  readonly jobId: string;
  readonly revision: number;
  readonly lastOdometerKm: number;
  readonly keysTaken: number | null;
  readonly customer: string;
  readonly today: string;
  readonly asksFollowUp: boolean;
}

/** What is written down when the keys change hands. */
export function HandOverForm(props: HandOverFormProps) {
  const { jobId, revision, lastOdometerKm, keysTaken, customer, today, asksFollowUp } = props;
  return (
    <ActionForm action={handOverAction} label="Hand over the vehicle">
      <input type="hidden" name="jobId" value={jobId} readOnly />
      <input type="hidden" name="revision" value={revision} readOnly />
      <div className="form-row">
        <TextField name="receivedBy" label="Received by" defaultValue={customer} isRequired />
        <NumberField
          name="odometerKm"
          label="Odometer"
          unit="km"
          isWhole
          isRequired
          help={`At least ${lastOdometerKm.toLocaleString("en-AU")} km, as last read.`}
        />
        <NumberField
          name="keys"
          label="Keys handed back"
          unit="keys"
          isWhole
          isRequired
          {...(keysTaken === null ? {} : { help: `${keysTaken} were taken in.` })}
        />
      </div>
      <DateField
        name="followUpOn"
        label={asksFollowUp ? "Re-torque visit agreed for" : "Follow-up visit"}
        earliest={today}
        isRequired={asksFollowUp}
        help="At 500 to 1,000 km: about four weeks of ordinary driving."
      />
      <TextField name="note" label="Note" lines={2} />
      <div className="form-actions">
        <SubmitButton pendingLabel="Handing over">Hand over the vehicle</SubmitButton>
      </div>
    </ActionForm>
  );
}
