import { SubmitButton } from "@/design/forms/submit-button";
import { Select } from "@/design/select";
import type { PickableItem } from "./pickable-item";

interface CopyToProps {
  readonly code: string;
  readonly versionId: string | null;
  readonly models: readonly PickableItem[];
}

/** Asks for the vehicle, and leads to what would not carry over. */
export function CopyTo({ code, versionId, models }: CopyToProps) {
  return (
    <form className="form" action={`/catalogue/packages/${code}/copy`} aria-label="Copy to another vehicle">
      {versionId !== null && <input type="hidden" name="draft" value={versionId} />}
      <Select
        name="to"
        label="Vehicle"
        {...(models[0] ? { defaultValue: models[0].code } : {})}
        options={models.map((model) => ({ id: model.code, label: model.name }))}
      />
      <div className="form-actions">
        <SubmitButton pendingLabel="Looking">See what carries over</SubmitButton>
      </div>
    </form>
  );
}
