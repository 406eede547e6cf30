import type { Component, FigureField } from "./figure-field";

/** The figures of an item as they stand on its form, by the path of their field; what is not there is empty. */
export function typedFigures(component: Component, figures: unknown): Readonly<Record<string, string>> {
  return Object.fromEntries(
    component.fields.map((field) => [field.path, typed(field, valueAt(figures, field.path))]),
  );
}

function valueAt(figures: unknown, path: string): unknown {
  let value = figures;
  for (const step of path.split(".")) {
    if (typeof value !== "object" || value === null) return undefined;
    value = Object.entries(value).find(([name]) => name === step)?.[1];
  }
  return value;
}

function typed(field: FigureField, value: unknown): string {
  if (Array.isArray(value) && field.kind === "curve")
    return value.map((point) => `${point?.[field.over]}: ${point?.[field.value]}`).join(", ");
  if (Array.isArray(value)) return value.join(", ");
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}
