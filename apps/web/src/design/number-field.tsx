"use client";

import { useState } from "react";
import { TextField as AriaTextField, Input } from "react-aria-components";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";
import { type Limits, limitRange, limitSentence } from "./read-number";

interface NumberFieldProps extends FieldProps {
  /** Shown after the figure; give "$" style marks as `prefix`. */
  readonly unit?: string;
  readonly prefix?: string;
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (typed: string) => void;
  /** Limits judged in words while typing; the use case judges again. */
  readonly limits?: Limits;
  /** Whole numbers only: the device shows the digit pad without a point. */
  readonly isWhole?: boolean;
  readonly isReadOnly?: boolean;
}

/**
 * A figure with its unit. It hands on what was typed, as typed: money and capacities are exact decimals, and
 * a field that reformats or drops a slip of the finger loses what the person meant.
 */
export function NumberField(props: NumberFieldProps) {
  const { label, help, unit, prefix, defaultValue, value, onChange, limits, isWhole, ...rest } = props;
  const first = useTypedValue(props.name, defaultValue) ?? "";
  const refused = useRefused(props.name);
  const [typed, setTyped] = useState(first);
  const shown = value ?? typed;
  const judged = limits ? limitSentence(shown, limits, unit ?? "") : null;
  const range = limits ? limitRange(limits, unit ?? "") : null;
  const isOutside = judged !== null && judged !== "Within limits.";
  return (
    <AriaTextField
      {...rest}
      {...refused}
      className="field"
      {...(value === undefined ? { defaultValue: first } : { value })}
      onChange={(next) => {
        setTyped(next);
        onChange?.(next);
      }}
    >
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <div className="field-line">
        {prefix && <span className="field-unit field-prefix">{prefix}</span>}
        <Input
          className="field-input field-figure"
          inputMode={isWhole ? "numeric" : "decimal"}
          autoComplete="off"
        />
        {unit && <span className="field-unit">{unit}</span>}
      </div>
      <FieldNotes name={props.name} help={help ?? range} />
      {judged && (
        <span className={isOutside ? "field-error" : "field-help"} aria-live="polite">
          {judged}
        </span>
      )}
    </AriaTextField>
  );
}
