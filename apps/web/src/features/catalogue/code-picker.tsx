"use client";

import { useState } from "react";
import { Button } from "@/design/button";
import { ComboBox } from "@/design/combo-box";

interface Named {
  readonly code: string;
  readonly name: string;
}

interface CodePickerProps {
  /** What each chosen code is sent as. */
  readonly name: string;
  readonly label: string;
  readonly addLabel: string;
  readonly empty: string;
  readonly choices: readonly Named[];
  readonly chosen: readonly string[];
}

/** Some of a long list: type a few letters to add one; each of those chosen can be taken away again. */
export function CodePicker({ name, label, addLabel, empty, choices, chosen }: CodePickerProps) {
  const [codes, setCodes] = useState(chosen);
  const nameOf = (code: string) => choices.find((each) => each.code === code)?.name ?? code;
  const add = (code: string | null) => {
    if (code !== null && !codes.includes(code)) setCodes([...codes, code]);
  };
  return (
    <fieldset className="field">
      <legend className="field-label">{label}</legend>
      {codes.length === 0 && <p className="field-help">{empty}</p>}
      <ul className="sentences" aria-label={label}>
        {codes.map((code) => (
          <li key={code} className="sentence">
            <span>{nameOf(code)}</span>
            <input type="hidden" name={name} value={code} readOnly />
            <Button
              variant="plain"
              aria-label={`Take away ${nameOf(code)}`}
              onPress={() => setCodes(codes.filter((each) => each !== code))}
            >
              Take away
            </Button>
          </li>
        ))}
      </ul>
      {/* Drawn anew after each choice, so that it is empty for the next. */}
      <ComboBox
        key={codes.length}
        label={addLabel}
        options={choices
          .filter(({ code }) => !codes.includes(code))
          .map((each) => ({ id: each.code, label: each.name }))}
        onChange={add}
      />
    </fieldset>
  );
}
