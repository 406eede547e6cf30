"use client";

import type { ReactNode } from "react";
import { CheckboxButton, CheckboxField } from "react-aria-components";
import { FieldRefusal, useRefused } from "./field-parts";
import { useTypedTick } from "./forms/form-context";

interface CheckboxProps {
  readonly name?: string;
  /** What the form carries when ticked. */
  readonly value?: string;
  readonly label: ReactNode;
  readonly note?: ReactNode;
  readonly defaultSelected?: boolean;
  readonly isSelected?: boolean;
  readonly onChange?: (isSelected: boolean) => void;
  readonly isDisabled?: boolean;
  readonly isRequired?: boolean;
}

/** Yes or no. */
export function Checkbox(props: CheckboxProps) {
  const { label, note, value = "yes", defaultSelected = false, isSelected, ...rest } = props;
  const ticked = useTypedTick(props.name, value, defaultSelected);
  const refused = useRefused(props.name);
  const held = isSelected === undefined ? { defaultSelected: ticked } : { isSelected };
  return (
    <CheckboxField {...rest} {...held} {...refused} value={value} className="choice-field">
      <CheckboxButton className="choice">
        <span className="choice-mark" aria-hidden="true">
          <Tick />
        </span>
        <span>
          {label}
          {note && <span className="choice-note">{note}</span>}
        </span>
      </CheckboxButton>
      <FieldRefusal name={props.name} />
    </CheckboxField>
  );
}

function Tick() {
  return (
    <svg className="choice-tick" viewBox="0 0 18 18" aria-hidden="true" focusable="false">
      <path d="M3.5 9.5 L7.5 13.5 L14.5 4.5" />
    </svg>
  );
}
