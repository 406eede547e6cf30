"use client";

import { ComboBox as AriaComboBox, Button, Input, Popover } from "react-aria-components";
import { Chevron } from "./chevron";
import { useDensity } from "./density";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";
import { OptionList } from "./option-list";
import type { Option } from "./options";

interface ComboBoxProps extends FieldProps {
  readonly options: readonly Option[];
  readonly defaultValue?: string;
  readonly onChange?: (id: string | null) => void;
  readonly placeholder?: string;
  /** Lets a word stand that is not in the list; the form then carries the text, else the entry's id. */
  readonly allowsOther?: boolean;
}

/** One of a long list: type a few letters. */
export function ComboBox(props: ComboBoxProps) {
  const { label, help, options, defaultValue, onChange, placeholder, allowsOther = false, ...rest } = props;
  const typed = useTypedValue(props.name, defaultValue);
  const refused = useRefused(props.name);
  const density = useDensity();
  const isListed = options.some((option) => option.id === typed);
  return (
    <AriaComboBox
      {...rest}
      {...refused}
      className="field"
      menuTrigger="focus"
      allowsCustomValue={allowsOther}
      formValue={allowsOther ? "text" : "key"}
      {...(isListed ? { defaultValue: typed ?? null } : { defaultInputValue: typed ?? "" })}
      onChange={(key) => onChange?.(key === null ? null : String(key))}
      allowsEmptyCollection
    >
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <div className="field-line">
        <Input className="field-input" placeholder={placeholder} />
        <Button className="field-button" aria-label={`Show ${label.toLowerCase()}`}>
          <Chevron />
        </Button>
      </div>
      <FieldNotes name={props.name} help={help} />
      <Popover className="popover" data-density={density}>
        {options.length === 0 ? (
          <p className="options-head">Nothing to choose from yet.</p>
        ) : (
          <OptionList options={options} />
        )}
      </Popover>
    </AriaComboBox>
  );
}
