"use client";

import { ListBox, ListBoxItem, Text } from "react-aria-components";
import type { Option } from "./options";

/** The list inside a select or combo box. An entry that cannot be chosen says why. */
export function OptionList({ options }: { readonly options: readonly Option[] }) {
  return (
    <ListBox className="options" items={options.map((option) => ({ ...option }))}>
      {(option) => (
        <ListBoxItem
          className="option"
          textValue={option.label}
          isDisabled={option.refusedBecause !== undefined}
        >
          <Text slot="label">{option.label}</Text>
          {(option.refusedBecause ?? option.note) && (
            <Text slot="description" className="option-note">
              {option.refusedBecause ?? option.note}
            </Text>
          )}
        </ListBoxItem>
      )}
    </ListBox>
  );
}
