"use client";

import { useState } from "react";
import { Checkbox } from "@/design/checkbox";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { saveItemAction } from "./actions";
import { CodePicker } from "./code-picker";
import { DraftFields } from "./draft-fields";
import { FigureFields, type ShownFigure } from "./figure-fields";

interface Named {
  readonly code: string;
  readonly name: string;
}

export interface ItemToEdit {
  readonly name: string;
  readonly system: string;
  readonly kind: string;
  readonly component: string;
  readonly maker: string;
  readonly supplier: string;
  readonly note: string;
  readonly price: string;
  readonly cost: string;
  readonly leadDays: number;
  readonly massKg: number;
  readonly warrantyMonths: number;
  readonly returnable: boolean;
  readonly oneUse: boolean;
  readonly serialised: boolean;
  readonly typed: Readonly<Record<string, string>>;
  readonly fits: readonly string[];
  readonly operations: readonly string[];
}

interface ItemFormProps {
  readonly version: { readonly id: string; readonly revision: number };
  readonly code: string | null;
  readonly item: ItemToEdit;
  readonly currency: string;
  readonly systems: readonly Named[];
  readonly kinds: readonly string[];
  readonly components: readonly (Named & { readonly fields: readonly ShownFigure[] })[];
  readonly models: readonly Named[];
  readonly operations: readonly Named[];
}

const options = (named: readonly Named[]) => named.map(({ code, name }) => ({ id: code, label: name }));

/** Everything that is said of an item; its figures are those of what it is on the vehicle. */
export function ItemForm(props: ItemFormProps) {
  const { version, code, item, systems, kinds, components } = props;
  const [component, setComponent] = useState(item.component);
  const figures = components.find((each) => each.code === component)?.fields ?? [];
  return (
    <ActionForm action={saveItemAction} label="Item">
      <DraftFields version={version} code={code} />
      <div className="form-row">
        <TextField name="name" label="Name" defaultValue={item.name} maxLength={120} isRequired />
        {code === null && (
          <TextField
            name="code"
            label="Code"
            help="Small letters, digits and hyphens; empty: made from the name."
          />
        )}
      </div>
      <div className="form-row">
        <Select
          name="system"
          label="System"
          options={options(systems)}
          defaultValue={item.system}
          isRequired
        />
        <Select
          name="kind"
          label="How it is bought"
          options={kinds.map((kind) => ({ id: kind, label: kind }))}
          defaultValue={item.kind}
          isRequired
        />
        <Select
          name="component"
          label="What it is on the vehicle"
          options={components.map((each) => ({ id: each.code, label: each.name }))}
          value={component}
          onChange={setComponent}
        />
      </div>
      <MoneyAndTime item={item} currency={props.currency} />
      <fieldset className="field">
        <legend className="field-label">Figures</legend>
        {/* Drawn anew for another component: its fields are others. */}
        <FigureFields key={component} figures={figures} typed={item.typed} />
      </fieldset>
      <fieldset className="field">
        <legend className="field-label">Fits these vehicles; none ticked: all</legend>
        {props.models.map((model) => (
          <Checkbox
            key={model.code}
            name="fits"
            value={model.code}
            label={model.name}
            defaultSelected={item.fits.includes(model.code)}
          />
        ))}
      </fieldset>
      <CodePicker
        name="operations"
        label="Work that comes with it"
        addLabel="Add an operation"
        empty="None: it is only handed over."
        choices={props.operations}
        chosen={item.operations}
      />
      <TextField name="note" label="Note" defaultValue={item.note} lines={3} maxLength={1000} />
      <div className="form-actions">
        <SubmitButton pendingLabel="Saving">Save in the draft</SubmitButton>
      </div>
    </ActionForm>
  );
}

function MoneyAndTime({ item, currency }: { readonly item: ItemToEdit; readonly currency: string }) {
  return (
    <>
      <div className="form-row">
        <NumberField
          name="price"
          label="Price without tax"
          unit={currency}
          defaultValue={item.price}
          isRequired
        />
        <NumberField
          name="cost"
          label="Cost without tax"
          unit={currency}
          defaultValue={item.cost}
          isRequired
        />
        <NumberField
          name="leadDays"
          label="Lead time"
          unit="days"
          defaultValue={`${item.leadDays}`}
          isWhole
          isRequired
        />
        <NumberField name="massKg" label="Mass" unit="kg" defaultValue={`${item.massKg}`} isRequired />
        <NumberField
          name="warrantyMonths"
          label="Warranty"
          unit="months"
          defaultValue={`${item.warrantyMonths}`}
          isWhole
          isRequired
        />
      </div>
      <div className="form-row">
        <TextField name="maker" label="Maker" defaultValue={item.maker} maxLength={80} />
        <TextField name="supplier" label="Supplier" defaultValue={item.supplier} maxLength={80} />
      </div>
      <div className="form-row">
        <Checkbox name="returnable" label="Can be returned" defaultSelected={item.returnable} />
        <Checkbox name="oneUse" label="Fitted once only" defaultSelected={item.oneUse} />
        <Checkbox name="serialised" label="Serial number recorded" defaultSelected={item.serialised} />
      </div>
    </>
  );
}
