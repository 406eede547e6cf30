import type { Refusal } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { DateField } from "@/design/date-field";
import { Notice } from "@/design/notice";
import { NumberField } from "@/design/number-field";

interface GoalFormProps {
  readonly vehicleId: string;
  readonly typed: Readonly<Record<string, string | undefined>>;
  readonly refusal: Refusal | null;
}

/** What is wanted, in plain fields. It stands in the address, so that the answer can be kept and sent. */
export function GoalForm({ vehicleId, typed, refusal }: GoalFormProps) {
  const { power = "", tow = "", by, budget = "" } = typed;
  return (
    <form className="grid gap-4" aria-label="What is wanted">
      <input type="hidden" name="vehicle" value={vehicleId} />
      <div className="form-row">
        <NumberField name="power" label="At least, at the hubs" unit="kW" defaultValue={power} />
        <NumberField name="tow" label="Tows a trailer of" unit="kg" defaultValue={tow} />
        <DateField name="by" label="Ready by" {...(by ? { defaultValue: by } : {})} />
        <NumberField name="budget" label="At most, with tax" unit="" defaultValue={budget} />
      </div>
      {refusal && <Notice title={refusal.sentence} />}
      <div className="form-actions">
        <Button type="submit" variant="primary">
          Find the ways
        </Button>
      </div>
    </form>
  );
}
