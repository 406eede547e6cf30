"use client";

import { ActionForm } from "@/design/forms/action-form";
import { SubmitButton } from "@/design/forms/submit-button";
import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { savePartAction } from "./actions";
import { CodePicker } from "./code-picker";
import { DraftFields } from "./draft-fields";

interface Named {
  readonly code: string;
  readonly name: string;
}

interface FormProps<Content> {
  readonly version: { readonly id: string; readonly revision: number };
  readonly code: string | null;
  readonly content: Content | null;
  readonly choices: readonly Named[];
}

const words = (choices: readonly string[]) => choices.map((choice) => ({ id: choice, label: choice }));
const rates = words(["workshop", "dyno"]);
const places = words(["hoist", "dyno", "road", "floor", "desk", "bought-in"]);
const skills = words(["mechanical", "electrical", "dyno", "calibration", "desk"]);
const stages = words([
  "inspection",
  "teardown",
  "fitting",
  "first-start",
  "calibration",
  "proof",
  "road-test",
  "hand-over",
  "after",
]);

function Save() {
  return (
    <div className="form-actions">
      <SubmitButton pendingLabel="Saving">Save in the draft</SubmitButton>
    </div>
  );
}

function CodeField({ code }: { readonly code: string | null }) {
  if (code !== null) return null;
  return (
    <TextField
      name="code"
      label="Code"
      help="Small letters, digits and hyphens; empty: made from the name."
    />
  );
}

type Group = { readonly name: string; readonly pick: string; readonly items: readonly string[] };

/** Items of which only one has its place on the vehicle, or one is needed. */
export function GroupForm({ version, code, content, choices }: FormProps<Group>) {
  return (
    <ActionForm action={savePartAction} label="Group">
      <DraftFields version={version} part="group" code={code} />
      <div className="form-row">
        <TextField name="after.name" label="Name" defaultValue={content?.name ?? ""} isRequired />
        <CodeField code={code} />
        <Select
          name="after.pick"
          label="Of these"
          options={[
            { id: "at-most-one", label: "at most one" },
            { id: "exactly-one", label: "exactly one" },
            { id: "at-least-one", label: "at least one" },
          ]}
          defaultValue={content?.pick ?? "at-most-one"}
          isRequired
        />
      </div>
      <CodePicker
        name="after.items"
        label="Items of the group"
        addLabel="Add an item"
        empty="None yet."
        choices={choices}
        chosen={content?.items ?? []}
      />
      <Save />
    </ActionForm>
  );
}

type Operation = {
  readonly name: string;
  readonly hours: string;
  readonly rate: string;
  readonly access: readonly string[];
  readonly place: string;
  readonly skill: string;
  readonly stage: string;
};

/** Work with its own hours; the access work that it shares with others counts once in a visit. */
export function OperationForm({ version, code, content, choices }: FormProps<Operation>) {
  return (
    <ActionForm action={savePartAction} label="Operation">
      <DraftFields version={version} part="operation" code={code} />
      <div className="form-row">
        <TextField name="after.name" label="Name" defaultValue={content?.name ?? ""} isRequired />
        <CodeField code={code} />
        <NumberField
          name="after.hours"
          label="Own work"
          unit="h"
          defaultValue={content?.hours ?? ""}
          isRequired
        />
        <Select name="after.rate" label="Rate" options={rates} defaultValue={content?.rate ?? "workshop"} />
      </div>
      <div className="form-row">
        <Select name="after.place" label="Where" options={places} defaultValue={content?.place ?? "hoist"} />
        <Select
          name="after.skill"
          label="Skill"
          options={skills}
          defaultValue={content?.skill ?? "mechanical"}
        />
        <Select
          name="after.stage"
          label="Stage"
          options={stages}
          defaultValue={content?.stage ?? "fitting"}
        />
      </div>
      <CodePicker
        name="after.access"
        label="Access work it needs"
        addLabel="Add access work"
        empty="None: nothing has to come off for it."
        choices={choices}
        chosen={content?.access ?? []}
      />
      <Save />
    </ActionForm>
  );
}

type Access = {
  readonly name: string;
  readonly hours: string;
  readonly rate: string;
  readonly needs: readonly string[];
};

/** Teardown and refit that several operations share. */
export function AccessForm({ version, code, content, choices }: FormProps<Access>) {
  return (
    <ActionForm action={savePartAction} label="Access work">
      <DraftFields version={version} part="access" code={code} />
      <div className="form-row">
        <TextField name="after.name" label="Name" defaultValue={content?.name ?? ""} isRequired />
        <CodeField code={code} />
        <NumberField
          name="after.hours"
          label="Off and on again"
          unit="h"
          defaultValue={content?.hours ?? ""}
          isRequired
        />
        <Select name="after.rate" label="Rate" options={rates} defaultValue={content?.rate ?? "workshop"} />
      </div>
      <CodePicker
        name="after.needs"
        label="What has to come off before"
        addLabel="Add access work"
        empty="Nothing."
        choices={choices.filter((each) => each.code !== code)}
        chosen={content?.needs ?? []}
      />
      <Save />
    </ActionForm>
  );
}
