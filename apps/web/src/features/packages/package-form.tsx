"use client";

import type { ContentOf } from "@buildproof/workshop";
import { Checkbox } from "@/design/checkbox";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { TextField } from "@/design/text-field";
import { savePackageAction } from "./actions";
import { ChoiceFields } from "./choice-fields";
import { ItemPicker } from "./item-picker";
import type { PickableItem } from "./pickable-item";

type Package = ContentOf<"package">;

interface PackageFormProps {
  /** Null for a package that is not there yet. */
  readonly code: string | null;
  readonly content: Package;
  readonly draft: { readonly id: string; readonly revision: number } | null;
  readonly items: readonly PickableItem[];
  readonly models: readonly PickableItem[];
}

/** Everything that a package says, on its way into a draft. */
export function PackageForm({ code, content, draft, items, models }: PackageFormProps) {
  return (
    <ActionForm action={savePackageAction} label="Package">
      <input type="hidden" name="code" value={code ?? ""} />
      <input type="hidden" name="versionId" value={draft?.id ?? ""} />
      <input type="hidden" name="revision" value={draft?.revision ?? 1} />
      <TextField name="name" label="Name" defaultValue={content.name} isRequired />
      <TextField
        name="outcome"
        label="What the owner will notice, in one sentence"
        lines={2}
        defaultValue={content.outcome}
      />
      <fieldset className="field">
        <legend className="field-label">For these vehicles (none ticked: for all)</legend>
        {models.map((model) => (
          <Checkbox
            key={model.code}
            name="models"
            value={model.code}
            label={model.name}
            defaultSelected={content.models.includes(model.code)}
          />
        ))}
      </fieldset>
      <ItemPicker name="items" label="Always in it" items={items} chosen={content.items} />
      <ChoiceFields choices={content.choices} items={items} />
      <ItemPicker name="options" label="May be added" items={items} chosen={content.options} />
      <PromiseFields promise={content.promise} />
      <Sentences name="assumptions" label="What it assumes" sentences={content.assumptions} />
      <Sentences name="exclusions" label="What it does not include" sentences={content.exclusions} />
      <Sentences name="cautions" label="What to be careful about" sentences={content.cautions} />
      <div className="form-actions">
        <SubmitButton pendingLabel="Saving">
          {draft ? "Save in the draft" : "Save as a new draft"}
        </SubmitButton>
      </div>
    </ActionForm>
  );
}

function PromiseFields({ promise }: Pick<Package, "promise">) {
  const power = promise && "lowKw" in promise ? promise : null;
  const typed = (figure: number | undefined) => (figure === undefined ? "" : String(figure));
  return (
    <fieldset className="field">
      <legend className="field-label">The promised outcome (empty: none)</legend>
      <div className="form-row">
        <NumberField
          name="lowKw"
          label="Power at the hubs, from"
          unit="kW"
          defaultValue={typed(power?.lowKw)}
        />
        <NumberField name="highKw" label="to" unit="kW" defaultValue={typed(power?.highKw)} />
        <NumberField name="boostKPa" label="Boost" unit="kPa" defaultValue={typed(power?.boostKPa)} />
        <NumberField name="towKg" label="Tows, braked" unit="kg" defaultValue={typed(promise?.towKg)} />
      </div>
      <TextField
        name="referenceCondition"
        label="Under what condition"
        defaultValue={power?.referenceCondition ?? ""}
      />
      <TextField
        name="remedy"
        label="What happens if it is missed"
        lines={2}
        defaultValue={power?.remedy ?? ""}
      />
    </fieldset>
  );
}

interface SentencesProps {
  readonly name: string;
  readonly label: string;
  readonly sentences: readonly string[];
}

function Sentences({ name, label, sentences }: SentencesProps) {
  return (
    <TextField
      name={name}
      label={label}
      help="One to a line."
      lines={Math.max(2, sentences.length)}
      defaultValue={sentences.join("\n")}
    />
  );
}
