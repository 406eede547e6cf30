"use client";

import { Button } from "@/design/button";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";
import { type DraftBlock, kindWords, type ResourceChoice } from "./booking-draft";
import { LocalTimeField } from "./local-time-field";
import "./plan.css";

interface BookingBlockProps {
  readonly block: DraftBlock;
  readonly resources: readonly ResourceChoice[];
  readonly listId: string;
  readonly onChange: (block: DraftBlock) => void;
  readonly onRemove: (() => void) | null;
}

/** One stretch of work: on what, from when to when, doing what. */
export function BookingBlock({ block, resources, listId, onChange, onRemove }: BookingBlockProps) {
  const { key, kind, resourceId, startsAt, endsAt, work } = block;
  const set = (part: Partial<DraftBlock>) => onChange({ ...block, ...part });
  const options = resources
    .filter((resource) => resource.kind === kind)
    .map(({ id, name, note }) => ({ id, label: name, ...(note ? { note } : {}) }));
  const label = kindWords[kind];
  return (
    <fieldset className="booking-block" data-unused={resourceId === "" || undefined}>
      <legend className="visually-hidden">{`Block ${Number(key) + 1}: ${label.toLowerCase()}`}</legend>
      <input type="hidden" name={`resourceId.${key}`} value={resourceId} readOnly />
      <Select
        label={label}
        options={[{ id: "", label: "Not needed" }, ...options]}
        value={resourceId}
        onChange={(id) => set({ resourceId: id })}
      />
      <LocalTimeField
        name={`startsAt.${key}`}
        label="From"
        value={startsAt}
        onChange={(value) =>
          set({ startsAt: value, ...(endsAt <= value ? { endsAt: later(value, endsAt) } : {}) })
        }
      />
      <LocalTimeField
        name={`endsAt.${key}`}
        label="To"
        value={endsAt}
        onChange={(value) => set({ endsAt: value })}
      />
      <div className="field">
        <label className="field-label" htmlFor={`${listId}-${key}`}>
          Work
        </label>
        <div className="field-line">
          <input
            id={`${listId}-${key}`}
            className="field-input"
            name={`work.${key}`}
            list={listId}
            value={work}
            maxLength={120}
            autoComplete="off"
            onChange={(event) => set({ work: event.target.value })}
          />
        </div>
      </div>
      {onRemove && (
        <div className="booking-block-remove">
          <Button variant="plain" onPress={onRemove} aria-label={`Remove block ${Number(key) + 1}`}>
            Remove
          </Button>
        </div>
      )}
    </fieldset>
  );
}

/** The end on the day of the new start, at the hour that it had. */
function later(startsAt: string, endsAt: string): string {
  const moved = `${startsAt.slice(0, 10)}T${endsAt.slice(11)}`;
  return moved > startsAt ? moved : startsAt;
}

interface ReasonFieldProps {
  readonly point: string;
  readonly title: string;
}

/** The manager's reason for letting a point pass; empty means that it is not overridden. */
export function ReasonField({ point, title }: ReasonFieldProps) {
  return (
    <TextField
      name={`override.${point}`}
      label={`Reason to override: ${title}`}
      help="At least 10 characters; recorded with your name."
    />
  );
}
