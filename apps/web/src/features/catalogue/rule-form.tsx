"use client";

import { useState } from "react";
import { Checkbox } from "@/design/checkbox";
import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { RadioGroup } from "@/design/radio-group";
import { TextField } from "@/design/text-field";
import { saveRuleAction } from "./actions";
import { type CapacityChoices, type CapacityDraft, CapacityEditor } from "./capacity-editor";
import { type ConditionChoices, ConditionEditor } from "./condition-editor";
import { linesOf, type SentCondition, sentCondition } from "./condition-lines";
import { DraftFields } from "./draft-fields";
import { RuleReadBack } from "./rule-read-back";
import "./catalogue.css";

export interface RuleToEdit {
  readonly kind: "needs" | "excludes" | "capacity";
  readonly when: SentCondition | null;
  readonly what: SentCondition | null;
  readonly capacity: CapacityDraft;
  readonly because: string;
  readonly source: string;
  readonly safety: boolean;
  readonly models: readonly string[];
}

interface RuleFormProps {
  readonly version: { readonly id: string; readonly revision: number };
  readonly code: string | null;
  readonly rule: RuleToEdit;
  readonly choices: ConditionChoices &
    CapacityChoices & { readonly models: readonly { readonly code: string; readonly name: string }[] };
}

const says = [
  { id: "needs", label: "the build needs something" },
  { id: "excludes", label: "the build cannot have something" },
  { id: "capacity", label: "no more is asked than is given" },
];

/** A rule put together from choices, read back as one sentence while it is. */
export function RuleForm({ version, code, rule, choices }: RuleFormProps) {
  const [kind, setKind] = useState(rule.kind);
  const [when, setWhen] = useState(() => linesOf(rule.when));
  const [what, setWhat] = useState(() => linesOf(rule.what));
  const [capacity, setCapacity] = useState(rule.capacity);
  const [because, setBecause] = useState(rule.because);
  const [source, setSource] = useState(rule.source);
  const [isSafety, setSafety] = useState(rule.safety);
  const [models, setModels] = useState(rule.models);
  const said =
    kind === "capacity"
      ? { kind, ...capacity }
      : { kind, when: sentCondition(when), what: sentCondition(what) ?? { item: "" } };
  const whole = { ...said, because, source, safety: isSafety, models };
  return (
    <ActionForm action={saveRuleAction} label="Rule">
      <DraftFields version={version} code={code} />
      <input type="hidden" name="rule" value={JSON.stringify(whole)} readOnly />
      <RadioGroup
        label="What the rule says"
        options={says}
        value={kind}
        onChange={(chosen) =>
          setKind(chosen === "capacity" ? "capacity" : chosen === "excludes" ? "excludes" : "needs")
        }
        orientation="horizontal"
      />
      {kind === "capacity" ? (
        <CapacityEditor capacity={capacity} choices={choices} onChange={setCapacity} />
      ) : (
        <>
          <ConditionEditor label="When the build has" list={when} choices={choices} onChange={setWhen} />
          {when.lines.length === 0 && <p className="field-help">No line: the rule holds for every build.</p>}
          <ConditionEditor
            label={kind === "needs" ? "it needs" : "it cannot have"}
            list={what}
            choices={choices}
            onChange={setWhat}
          />
        </>
      )}
      <RuleReadBack
        versionId={version.id}
        rule={{ ...whole, because: because || "-", source: source || "-" }}
      />
      <TextField
        label="Why"
        help="So that a customer understands it."
        value={because}
        onChange={setBecause}
        lines={2}
        maxLength={1000}
        isRequired
      />
      <TextField
        label="Source"
        help="A standard, a maker’s sheet, or: common practice, no source."
        value={source}
        onChange={setSource}
        maxLength={300}
        isRequired
      />
      <Checkbox
        label="Safety"
        note="Nobody overrides it: not at the booking gate either."
        isSelected={isSafety}
        onChange={setSafety}
      />
      <fieldset className="field">
        <legend className="field-label">On these vehicles; none ticked: all</legend>
        {choices.models.map((model) => (
          <Checkbox
            key={model.code}
            label={model.name}
            isSelected={models.includes(model.code)}
            onChange={(isOn) =>
              setModels(isOn ? [...models, model.code] : models.filter((each) => each !== model.code))
            }
          />
        ))}
      </fieldset>
      <div className="form-actions">
        <SubmitButton pendingLabel="Saving">Save in the draft</SubmitButton>
      </div>
    </ActionForm>
  );
}
