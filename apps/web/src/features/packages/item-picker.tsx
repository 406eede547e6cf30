"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { ComboBox } from "@/design/combo-box";
import type { PickableItem } from "./pickable-item";

interface ItemPickerProps {
  /** Each chosen code is sent under this name. */
  readonly name: string;
  readonly label: string;
  readonly help?: string;
  readonly items: readonly PickableItem[];
  readonly chosen: readonly string[];
}

/** Several items out of a long list: those chosen stand above, and the next is found by a few letters. */
export function ItemPicker({ name, label, help, items, chosen }: ItemPickerProps) {
  const [codes, setCodes] = useState(chosen);
  const nameOf = (code: string) => items.find((item) => item.code === code)?.name ?? code;
  return (
    <fieldset className="field">
      <legend className="field-label">{label}</legend>
      {codes.length > 0 && (
        <ul className="sentences" aria-label={label}>
          {codes.map((code) => (
            <li key={code} className="sentence">
              <span>{nameOf(code)}</span>
              <input type="hidden" name={name} value={code} readOnly />
              <Button
                variant="plain"
                aria-label={`Take out ${nameOf(code)}`}
                onPress={() => setCodes(codes.filter((each) => each !== code))}
              >
                Take out
              </Button>
            </li>
          ))}
        </ul>
      )}
      <ComboBox
        key={codes.length}
        label={codes.length === 0 ? "Add an item" : "Add one more"}
        help={help}
        options={items
          .filter(({ code }) => !codes.includes(code))
          .map(({ code, name: label }) => ({ id: code, label }))}
        onChange={(code) => code !== null && setCodes([...codes, code])}
      />
    </fieldset>
  );
}
