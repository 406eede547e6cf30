"use client";

import { Select as AriaSelect, Button, Popover, SelectValue } from "react-aria-components";
import { Chevron } from "./chevron";
import { useDensity } from "./density";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";
import { OptionList } from "./option-list";
import type { Option } from "./options";

interface SelectProps extends FieldProps {
  readonly options: readonly Option[];
  readonly defaultValue?: string;
  readonly value?: string;
  readonly onChange?: (id: string) => void;
  readonly placeholder?: string;
}

/** One of a short list. */
export function Select(props: SelectProps) {
  const { label, help, options, defaultValue, value, onChange, placeholder = "Choose", ...rest } = props;
  const typed = useTypedValue(props.name, defaultValue);
  const refused = useRefused(props.name);
  const density = useDensity();
  const chosen = value === undefined ? { defaultValue: typed ?? null } : { value };
  return (
    <AriaSelect
      {...rest}
      {...refused}
      {...chosen}
      placeholder={placeholder}
      className="field"
      onChange={(key) => key !== null && onChange?.(String(key))}
    >
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <div className="field-line">
        <Button className="select-trigger">
          <SelectValue />
          <Chevron />
        </Button>
      </div>
      <FieldNotes name={props.name} help={help} />
      <Popover className="popover" data-density={density}>
        <OptionList options={options} />
      </Popover>
    </AriaSelect>
  );
}
