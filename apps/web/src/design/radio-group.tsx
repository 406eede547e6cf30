"use client";

import { RadioGroup as AriaRadioGroup, RadioButton, RadioField } from "react-aria-components";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";
import type { Option } from "./options";

interface RadioGroupProps extends FieldProps {
  readonly options: readonly Option[];
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (id: string) => void;
  readonly orientation?: "horizontal" | "vertical";
}

/** One of a few, all in view. */
export function RadioGroup(props: RadioGroupProps) {
  const { label, help, options, defaultValue, value, orientation = "vertical", ...rest } = props;
  const typed = useTypedValue(props.name, defaultValue);
  const refused = useRefused(props.name);
  const held = value === undefined ? { defaultValue: typed ?? null } : { value };
  return (
    <AriaRadioGroup {...rest} {...refused} {...held} className="field" orientation={orientation}>
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <div className="choice-group" data-orientation={orientation}>
        {options.map((option) => (
          <RadioField key={option.id} value={option.id} isDisabled={option.refusedBecause !== undefined}>
            <RadioButton className="choice">
              <span className="choice-mark choice-mark-round" aria-hidden="true" />
              <span>
                {option.label}
                {(option.refusedBecause ?? option.note) && (
                  <span className="choice-note">{option.refusedBecause ?? option.note}</span>
                )}
              </span>
            </RadioButton>
          </RadioField>
        ))}
      </div>
      <FieldNotes name={props.name} help={help} />
    </AriaRadioGroup>
  );
}
