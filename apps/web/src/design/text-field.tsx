"use client";

import type { HTMLInputAutoCompleteAttribute, HTMLInputTypeAttribute } from "react";
import { TextField as AriaTextField, Input, TextArea } from "react-aria-components";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";

interface TextFieldProps extends FieldProps {
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (value: string) => void;
  readonly type?: Extract<HTMLInputTypeAttribute, "text" | "email" | "tel" | "password" | "search" | "url">;
  readonly autoComplete?: HTMLInputAutoCompleteAttribute;
  readonly placeholder?: string;
  readonly maxLength?: number;
  /** More than one line: how many are shown at first. */
  readonly lines?: number;
  readonly autoFocus?: boolean;
  readonly isReadOnly?: boolean;
  /** Shown as written on a plate or VIN: capitals, no correction by the device. */
  readonly isCode?: boolean;
}

/** A line, or several, to write on. */
export function TextField(props: TextFieldProps) {
  const { label, help, lines, placeholder, defaultValue, value, isCode, autoFocus, ...rest } = props;
  const typed = useTypedValue(props.name, defaultValue);
  const refused = useRefused(props.name);
  const held = value === undefined ? { defaultValue: typed ?? "" } : { value };
  const code = isCode ? { autoCapitalize: "characters", autoCorrect: "off", spellCheck: false } : {};
  return (
    <AriaTextField {...rest} {...refused} {...held} className="field">
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <div className="field-line">
        {lines === undefined ? (
          <Input className="field-input" placeholder={placeholder} autoFocus={autoFocus} {...code} />
        ) : (
          <TextArea className="field-input" placeholder={placeholder} rows={lines} />
        )}
      </div>
      <FieldNotes name={props.name} help={help} />
    </AriaTextField>
  );
}
