"use client";

import { Button } from "@/design/button";
import { Checkbox } from "@/design/checkbox";
import { ComboBox } from "@/design/combo-box";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";

interface Named {
  readonly code: string;
  readonly name: string;
}

export interface CapacityChoices {
  readonly items: readonly Named[];
  readonly links: readonly Named[];
  readonly bases: readonly Named[];
}

interface AmountLine {
  readonly item: string;
  readonly side: "supply" | "demand";
  readonly amount: string;
  readonly replaces: boolean;
}

export interface CapacityDraft {
  readonly quantity: string;
  readonly unit: string;
  readonly link: string;
  readonly baseFact: string;
  readonly reservePct: string;
  readonly amounts: readonly AmountLine[];
}

interface CapacityEditorProps {
  readonly capacity: CapacityDraft;
  readonly choices: CapacityChoices;
  readonly onChange: (capacity: CapacityDraft) => void;
}

const options = (named: readonly Named[]) => named.map(({ code, name }) => ({ id: code, label: name }));

/** A limit: what the vehicle and its items give, against what its items ask, in one unit. */
export function CapacityEditor({ capacity, choices, onChange }: CapacityEditorProps) {
  const { quantity, unit, link, baseFact, reservePct, amounts } = capacity;
  const put = (index: number, line: AmountLine) =>
    onChange({ ...capacity, amounts: amounts.map((each, at) => (at === index ? line : each)) });
  return (
    <>
      <div className="form-row">
        <TextField
          label="Quantity"
          help="In words, such as high-pressure fuel at 6,000 rpm."
          value={quantity}
          onChange={(next) => onChange({ ...capacity, quantity: next })}
          isRequired
        />
        <TextField label="Unit" value={unit} onChange={(next) => onChange({ ...capacity, unit: next })} />
        <Select
          label="Link of the chain"
          options={options(choices.links)}
          {...(link ? { value: link } : {})}
          onChange={(next) => onChange({ ...capacity, link: next })}
          isRequired
        />
        <Select
          label="The vehicle itself gives"
          options={options(choices.bases)}
          {...(baseFact ? { value: baseFact } : {})}
          onChange={(next) => onChange({ ...capacity, baseFact: next })}
          isRequired
        />
        <NumberField
          label="Kept in reserve"
          unit="%"
          value={reservePct}
          onChange={(next) => onChange({ ...capacity, reservePct: next })}
        />
      </div>
      <fieldset className="rule-list">
        <legend className="field-label">What items give and ask</legend>
        {amounts.map((line, index) => (
          <Amount
            // biome-ignore lint/suspicious/noArrayIndexKey: lines are only added at the end; a removed one redraws all.
            key={`${amounts.length}-${index}`}
            label={`Line ${index + 1}`}
            line={line}
            unit={unit}
            items={choices.items}
            onChange={(next) => put(index, next)}
            onRemove={() => onChange({ ...capacity, amounts: amounts.filter((_, at) => at !== index) })}
          />
        ))}
        <div className="form-actions">
          <Button
            variant="plain"
            onPress={() =>
              onChange({
                ...capacity,
                amounts: [...amounts, { item: "", side: "demand", amount: "", replaces: false }],
              })
            }
          >
            Add a line
          </Button>
        </div>
      </fieldset>
    </>
  );
}

interface AmountProps {
  readonly label: string;
  readonly line: AmountLine;
  readonly unit: string;
  readonly items: readonly Named[];
  readonly onChange: (line: AmountLine) => void;
  readonly onRemove: () => void;
}

function Amount({ label, line, unit, items, onChange, onRemove }: AmountProps) {
  return (
    <div className="rule-line">
      <ComboBox
        label={`${label}: item`}
        options={options(items)}
        defaultValue={line.item}
        onChange={(item) => onChange({ ...line, item: item ?? "" })}
      />
      <Select
        label={`${label}: gives or asks`}
        options={[
          { id: "demand", label: "asks" },
          { id: "supply", label: "gives" },
        ]}
        value={line.side}
        onChange={(side) => onChange({ ...line, side: side === "supply" ? "supply" : "demand" })}
      />
      <NumberField
        label={`${label}: amount`}
        unit={unit}
        value={line.amount}
        onChange={(amount) => onChange({ ...line, amount })}
      />
      {line.side === "supply" && (
        <Checkbox
          label="in place of the standard part"
          isSelected={line.replaces}
          onChange={(replaces) => onChange({ ...line, replaces })}
        />
      )}
      <Button variant="plain" aria-label={`${label}: take away`} onPress={onRemove}>
        Take away
      </Button>
    </div>
  );
}
