"use client";

import { parseDate } from "@internationalized/date";
import {
  Button,
  Calendar,
  CalendarCell,
  CalendarGrid,
  DateInput,
  DatePicker,
  DateSegment,
  Dialog,
  Group,
  Heading,
  Popover,
} from "react-aria-components";
import { Chevron } from "./chevron";
import { useDensity } from "./density";
import { FieldLabel, FieldNotes, type FieldProps, useRefused } from "./field-parts";
import { useTypedValue } from "./forms/form-context";

interface DateFieldProps extends FieldProps {
  /** Dates as written by ISO 8601: 2026-12-18. The form carries the same. */
  readonly defaultValue?: string;
  readonly earliest?: string;
  readonly latest?: string;
  readonly onChange?: (isoDate: string | null) => void;
}

const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;

function dateOrNull(text: string | undefined) {
  if (text === undefined || !ISO_DATE.test(text)) return null;
  try {
    return parseDate(text);
  } catch {
    return null;
  }
}

/** A date without a time, typed by segment or picked from the month. */
export function DateField(props: DateFieldProps) {
  const { label, help, defaultValue, earliest, latest, onChange, ...rest } = props;
  const typed = useTypedValue(props.name, defaultValue);
  const refused = useRefused(props.name);
  const density = useDensity();
  return (
    <DatePicker
      {...rest}
      {...refused}
      className="field"
      defaultValue={dateOrNull(typed)}
      minValue={dateOrNull(earliest)}
      maxValue={dateOrNull(latest)}
      onChange={(date) => onChange?.(date === null ? null : date.toString())}
      shouldForceLeadingZeros
    >
      <FieldLabel label={label} isRequired={props.isRequired ?? false} />
      <Group className="field-line">
        <DateInput className="field-input field-date">
          {(segment) => <DateSegment className="date-segment" segment={segment} />}
        </DateInput>
        <Button className="field-button">
          <Chevron />
        </Button>
      </Group>
      <FieldNotes name={props.name} help={help} />
      <Popover className="popover" data-density={density}>
        <Dialog className="calendar">
          <MonthGrid />
        </Dialog>
      </Popover>
    </DatePicker>
  );
}

function MonthGrid() {
  return (
    <Calendar>
      <header>
        <Button slot="previous" className="field-button">
          <span aria-hidden="true">←</span>
        </Button>
        <Heading level={2} className="calendar-month" />
        <Button slot="next" className="field-button">
          <span aria-hidden="true">→</span>
        </Button>
      </header>
      <CalendarGrid>{(date) => <CalendarCell date={date} className="calendar-day" />}</CalendarGrid>
    </Calendar>
  );
}
