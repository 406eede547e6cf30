"use client";

import { useState } from "react";
import { ComboBox } from "@/design/combo-box";
import { moneyText } from "@/design/money-text";
import type { Option } from "@/design/options";
import { obstacleWords, RefusedChoices } from "./refused-choices";
import { adding } from "./sheet-change";
import type { SheetSystem } from "./sheet-system";
import { useSheet } from "./use-sheet";

interface ItemChooserProps {
  readonly system: SheetSystem;
  readonly currency: string;
  readonly onChosen: (code: string) => void;
}

/** What else fits the vehicle in this system. What cannot be chosen stays in the list and says why. */
export function ItemChooser({ system, currency, onChosen }: ItemChooserProps) {
  const { change } = useSheet();
  const [count, setCount] = useState(0);
  const options: readonly Option[] = system.choices.map((choice) => ({
    id: choice.code,
    label: choice.name,
    note: [
      choice.grossMinor === 0 ? "priced by its hours" : moneyText(choice.grossMinor, currency),
      choice.replaces.length > 0 ? `in place of ${choice.replaces.join(", ")}` : "",
    ]
      .filter((part) => part !== "")
      .join(" · "),
    ...(choice.obstacle === null ? {} : { refusedBecause: obstacleWords(choice.obstacle) }),
  }));
  return (
    <div className="no-print grid max-w-md gap-1 [&_.field-label]:sr-only">
      <ComboBox
        // Emptied once a choice is made, for the next one.
        key={count}
        label={`Add to ${system.name.toLowerCase()}`}
        options={options}
        placeholder={`Add to ${system.name.toLowerCase()}`}
        onChange={(code) => {
          const choice = system.choices.find((each) => each.code === code);
          if (!choice) return;
          onChosen(choice.code);
          setCount((chosen) => chosen + 1);
          change(`${choice.name} added`, adding([choice.code]));
        }}
      />
      <RefusedChoices choices={system.choices} />
    </div>
  );
}
