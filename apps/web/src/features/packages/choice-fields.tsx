"use client";

import type { ContentOf } from "@buildproof/workshop";
import { useState } from "react";
import { Button } from "@/design/button";
import { useFieldRefusal } from "@/design/forms/form-context";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { ItemPicker } from "./item-picker";
import type { PickableItem } from "./pickable-item";

type Choices = ContentOf<"package">["choices"];

interface ChoiceFieldsProps {
  readonly choices: Choices;
  readonly items: readonly PickableItem[];
}

const picks = [
  { id: "exactly-one", label: "one must be chosen" },
  { id: "at-most-one", label: "one may be chosen" },
  { id: "at-least-one", label: "one or more must be chosen" },
];

/** The choices that a package leaves to the owner of the vehicle. */
export function ChoiceFields({ choices, items }: ChoiceFieldsProps) {
  const [rows, setRows] = useState(choices.map((choice, id) => ({ id, choice })));
  const refusal = useFieldRefusal("choices");
  const add = () => {
    const id = Math.max(-1, ...rows.map((row) => row.id)) + 1;
    setRows([...rows, { id, choice: { name: "", pick: "exactly-one", items: [] } }]);
  };
  return (
    <>
      {rows.map(({ id, choice }, index) => (
        <fieldset key={id} className="field">
          <legend className="field-label">Choice {index + 1}</legend>
          <input type="hidden" name="choiceIds" value={id} />
          <div className="form-row">
            <TextField
              name={`choice.${id}.name`}
              label="What is chosen"
              defaultValue={choice.name}
              isRequired
            />
            <Select name={`choice.${id}.pick`} label="How many" defaultValue={choice.pick} options={picks} />
          </div>
          <ItemPicker name={`choice.${id}.items`} label="Among these" items={items} chosen={choice.items} />
          <Button variant="plain" onPress={() => setRows(rows.filter((row) => row.id !== id))}>
            Take choice {index + 1} out
          </Button>
        </fieldset>
      ))}
      {refusal && <p className="field-error">{refusal}</p>}
      <div className="form-actions">
        <Button onPress={add}>Add a choice</Button>
      </div>
    </>
  );
}
