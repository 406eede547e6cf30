"use client";

import { Button } from "@/design/button";
import { ComboBox } from "@/design/combo-box";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { type ConditionLine, type ConditionList, factLine, itemLine, listLine } from "./condition-lines";

export interface ConditionChoices {
  readonly items: readonly { readonly code: string; readonly name: string }[];
  readonly facts: readonly { readonly code: string; readonly name: string; readonly isSo: boolean }[];
}

interface ConditionEditorProps {
  readonly label: string;
  readonly list: ConditionList;
  readonly choices: ConditionChoices;
  readonly onChange: (list: ConditionList) => void;
  readonly depth?: number;
}

/** Deeper than this nobody reads a sentence; what comes from elsewhere is shown however deep it is. */
const DEEPEST = 2;

/** Lines joined by "and" or "or"; a line is an item, something about the vehicle, or a list of its own. */
export function ConditionEditor({ label, list, choices, onChange, depth = 0 }: ConditionEditorProps) {
  const put = (line: ConditionLine) =>
    onChange({ ...list, lines: list.lines.map((each) => (each.id === line.id ? line : each)) });
  const add = (line: ConditionLine) => onChange({ ...list, lines: [...list.lines, line] });
  return (
    <fieldset className="rule-list" data-depth={depth}>
      <legend className="field-label">{label}</legend>
      {list.lines.length > 1 && (
        <Select
          label={`${label}: how its lines go together`}
          options={[
            { id: "all", label: "all of these" },
            { id: "any", label: "any of these" },
          ]}
          value={list.join}
          onChange={(join) => onChange({ ...list, join: join === "any" ? "any" : "all" })}
        />
      )}
      {list.lines.map((line, index) => (
        <Line
          key={line.id}
          label={`${label}, line ${index + 1}`}
          line={line}
          choices={choices}
          depth={depth}
          onChange={put}
          onRemove={() => onChange({ ...list, lines: list.lines.filter((each) => each.id !== line.id) })}
        />
      ))}
      <div className="form-actions">
        <Button variant="plain" aria-label={`${label}: add an item`} onPress={() => add(itemLine())}>
          Add an item
        </Button>
        <Button
          variant="plain"
          aria-label={`${label}: add a fact of the vehicle`}
          onPress={() => add(factLine())}
        >
          Add a fact of the vehicle
        </Button>
        {depth < DEEPEST && (
          <Button
            variant="plain"
            aria-label={`${label}: add a list`}
            onPress={() => add(listLine(list.join === "all" ? "any" : "all", [itemLine(), itemLine()]))}
          >
            Add a list
          </Button>
        )}
      </div>
    </fieldset>
  );
}

interface LineProps {
  readonly label: string;
  readonly line: ConditionLine;
  readonly choices: ConditionChoices;
  readonly depth: number;
  readonly onChange: (line: ConditionLine) => void;
  readonly onRemove: () => void;
}

function Line({ label, line, choices, depth, onChange, onRemove }: LineProps) {
  return (
    <div className="rule-line">
      <Select
        label={`${label}: with or without`}
        options={[
          { id: "with", label: "with" },
          { id: "not", label: "not" },
        ]}
        value={line.isNot ? "not" : "with"}
        onChange={(chosen) => onChange({ ...line, isNot: chosen === "not" })}
      />
      {line.kind === "item" && (
        <ComboBox
          label={`${label}: item`}
          options={choices.items.map(({ code, name }) => ({ id: code, label: name }))}
          defaultValue={line.item}
          onChange={(item) => onChange({ ...line, item: item ?? "" })}
        />
      )}
      {line.kind === "fact" && <FactLine label={label} line={line} choices={choices} onChange={onChange} />}
      {line.kind === "list" && (
        <ConditionEditor label={label} list={line} choices={choices} onChange={onChange} depth={depth + 1} />
      )}
      <Button variant="plain" aria-label={`${label}: take away`} onPress={onRemove}>
        Take away
      </Button>
    </div>
  );
}

interface FactLineProps extends Pick<LineProps, "label" | "choices" | "onChange"> {
  readonly line: Extract<ConditionLine, { readonly kind: "fact" }>;
}

function FactLine({ label, line, choices, onChange }: FactLineProps) {
  const isSo = choices.facts.find(({ code }) => code === line.fact)?.isSo ?? false;
  return (
    <>
      <ComboBox
        label={`${label}: fact of the vehicle`}
        options={choices.facts.map(({ code, name }) => ({ id: code, label: name }))}
        defaultValue={line.fact}
        onChange={(chosen) => {
          const fact = chosen ?? "";
          const so = choices.facts.some(({ code, isSo: is }) => code === fact && is);
          onChange({ ...line, fact, atLeast: so ? "1" : line.atLeast });
        }}
      />
      {!isSo && (
        <NumberField
          label={`${label}: at least`}
          value={line.atLeast}
          onChange={(atLeast) => onChange({ ...line, atLeast })}
        />
      )}
    </>
  );
}
