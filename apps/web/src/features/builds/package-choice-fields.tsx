"use client";

import type { OfferedItem, OfferedPackage } from "@buildproof/workshop";
import { Checkbox } from "@/design/checkbox";
import { moneyText } from "@/design/money-text";
import { RadioGroup } from "@/design/radio-group";

interface PackageChoiceFieldsProps {
  readonly offered: OfferedPackage;
  readonly currency: string;
}

/** What a package leaves to the owner: its choices, each answered as it asks to be, and what may be added. */
export function PackageChoiceFields({ offered, currency }: PackageChoiceFieldsProps) {
  return (
    <>
      {offered.choices.map((choice, index) => (
        <ChoiceField key={choice.name} choice={choice} name={`choice.${index}`} currency={currency} />
      ))}
      {offered.options.length > 0 && (
        <Ticks legend="May be added" name="choice.option" items={offered.options} currency={currency} />
      )}
    </>
  );
}

interface ChoiceFieldProps {
  readonly choice: OfferedPackage["choices"][number];
  readonly name: string;
  readonly currency: string;
}

function ChoiceField({ choice, name, currency }: ChoiceFieldProps) {
  if (choice.pick === "at-least-one")
    return (
      <Ticks legend={`${choice.name}, one or more`} name={name} items={choice.items} currency={currency} />
    );
  const options = choice.items.map((item) => ({
    id: item.code,
    label: item.name,
    note: moneyText(item.grossMinor, currency),
  }));
  const isRequired = choice.pick === "exactly-one";
  const first = choice.items[0]?.code;
  return (
    <RadioGroup
      name={name}
      label={choice.name}
      isRequired={isRequired}
      defaultValue={isRequired && first !== undefined ? first : "none"}
      options={isRequired ? options : [{ id: "none", label: "None of these" }, ...options]}
    />
  );
}

interface TicksProps {
  readonly legend: string;
  readonly name: string;
  readonly items: readonly OfferedItem[];
  readonly currency: string;
}

function Ticks({ legend, name, items, currency }: TicksProps) {
  return (
    <fieldset className="field">
      <legend className="field-label">{legend}</legend>
      {items.map((item) => (
        <Checkbox
          key={item.code}
          name={name}
          value={item.code}
          label={item.name}
          note={moneyText(item.grossMinor, currency)}
        />
      ))}
    </fieldset>
  );
}
