"use client";

import { parseDateTime } from "@internationalized/date";
import { DateField, DateInput, DateSegment, Label } from "react-aria-components";

interface LocalTimeFieldProps {
  readonly name: string;
  readonly label: string;
  /** On the clock of the workshop: `2026-12-08T09:00`; empty when none is entered. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Day and time on the clock of the workshop; the browser's own zone has no say in it. */
export function LocalTimeField({ name, label, value, onChange }: LocalTimeFieldProps) {
  return (
    <DateField
      className="field"
      value={value === "" ? null : parseDateTime(value)}
      granularity="minute"
      hourCycle={24}
      shouldForceLeadingZeros
      onChange={(typed) =>
        onChange(typed === null ? "" : typed.toString().slice(0, "2026-12-08T09:00".length))
      }
    >
      <Label className="field-label">{label}</Label>
      <div className="field-line">
        <DateInput className="field-input field-date">
          {(segment) => <DateSegment className="date-segment" segment={segment} />}
        </DateInput>
      </div>
      <input type="hidden" name={name} value={value} readOnly />
    </DateField>
  );
}
