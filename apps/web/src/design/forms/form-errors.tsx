"use client";

import { useFormState } from "./form-context";

/** What the form was refused for, at its top; ActionForm places it. */
export function FormErrors() {
  const { state } = useFormState();
  if (state.status !== "refused") return null;
  const { sentence, points } = state.refusal;
  return (
    <div className="notice" data-kind="blocks" data-form-errors role="alert" tabIndex={-1}>
      <p className="notice-title">{sentence}</p>
      {points && points.length > 0 && (
        <ul>
          {points.map((point) => (
            <li key={point}>{point}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
