"use client";

import { type ChangeEvent, useId } from "react";
import { useFieldRefusal } from "./forms/form-context";

interface FileFieldProps {
  readonly name: string;
  readonly label: string;
  readonly help?: string;
  /** What the picker offers; the use case looks at the bytes. */
  readonly accept?: string;
  /** Opens the camera on a phone. */
  readonly fromCamera?: boolean;
  readonly multiple?: boolean;
  readonly isRequired?: boolean;
  readonly onChange?: (files: readonly File[]) => void;
}

/** A file, a photo, or a log from the dyno. */
export function FileField(props: FileFieldProps) {
  const { name, label, help, accept, fromCamera, multiple, isRequired, onChange } = props;
  const id = useId();
  const sentence = useFieldRefusal(name);
  const notes = [help && `${id}-help`, sentence && `${id}-error`].filter(Boolean).join(" ");
  return (
    <div className="field" data-invalid={sentence ? true : undefined}>
      <label className="field-label" htmlFor={id}>
        {label}
        {isRequired && <span className="field-required"> (required)</span>}
      </label>
      <div className="field-line">
        <input
          id={id}
          className="file-input"
          type="file"
          name={name}
          accept={accept}
          capture={fromCamera ? "environment" : undefined}
          multiple={multiple}
          aria-invalid={sentence ? true : undefined}
          aria-describedby={notes || undefined}
          onChange={(event: ChangeEvent<HTMLInputElement>) => onChange?.([...(event.target.files ?? [])])}
        />
      </div>
      {help && (
        <span id={`${id}-help`} className="field-help">
          {help}
        </span>
      )}
      {sentence && (
        <span id={`${id}-error`} className="field-error">
          {sentence}
        </span>
      )}
    </div>
  );
}
