"use client";

import { ListBox, ListBoxItem } from "react-aria-components";
import type { Option } from "./options";

/** The list inside a select or combo box. An entry that cannot be chosen says why, and its name says it too. */
export function OptionList({ options }: { readonly options: readonly Option[] }) {
  return (
    <ListBox className="options" items={options.map((option) => ({ ...option }))}>
      {(option) => (
        <ListBoxItem
          className="option"
          textValue={option.label}
          isDisabled={option.refusedBecause !== undefined}
        >
          {option.label}
          {(option.refusedBecause ?? option.note) && (
            <span className="option-note">{option.refusedBecause ?? option.note}</span>
          )}
        </ListBoxItem>
      )}
    </ListBox>
  );
}
