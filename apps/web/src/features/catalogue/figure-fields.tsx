"use client";

import { NumberField } from "@/design/number-field";
import { Select } from "@/design/select";
import { TextField } from "@/design/text-field";

/** A figure of an item, as far as a form needs to know it. */
export interface ShownFigure {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly kind: "number" | "curve" | "list" | "text" | "choice";
  readonly isRequired: boolean;
  readonly help: string;
  readonly choices: readonly { readonly code: string; readonly name: string }[];
}

interface FigureFieldsProps {
  readonly figures: readonly ShownFigure[];
  readonly typed: Readonly<Record<string, string>>;
}

/** The figures that the engineering asks of what the item is, each with its unit. */
export function FigureFields({ figures, typed }: FigureFieldsProps) {
  if (figures.length === 0)
    return <p className="field-help">Of such an item the engineering asks nothing.</p>;
  return (
    <div className="form-row">
      {figures.map((figure) => {
        const { path, label, unit, isRequired, help } = figure;
        const field = { name: `figures.${path}`, label, isRequired, defaultValue: typed[path] ?? "" };
        if (figure.kind === "number")
          return <NumberField key={path} {...field} unit={unit} help={help || undefined} />;
        if (figure.kind === "choice")
          return (
            <Select
              key={path}
              {...field}
              help={help || undefined}
              options={[
                ...(isRequired ? [] : [{ id: "", label: "nothing said" }]),
                ...figure.choices.map(({ code, name }) => ({ id: code, label: name })),
              ]}
            />
          );
        return (
          <TextField
            key={path}
            {...field}
            label={unit ? `${label}, ${unit}` : label}
            help={help || undefined}
          />
        );
      })}
    </div>
  );
}
