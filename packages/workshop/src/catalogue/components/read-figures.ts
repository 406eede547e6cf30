import type { Component, FigureField } from "./figure-field";
import { readFigure } from "./read-figure";

export type FigureFault = { readonly path: string; readonly sentence: string };

type Json = number | string | readonly Json[] | { readonly [name: string]: Json };
type Tree = Map<string, Tree | Json>;

/** The figures of an item from what was typed, by path, or everything that is wrong with it, in sentences. */
export function readFigures(
  component: Component,
  typed: Readonly<Record<string, string>>,
): { readonly figures: Readonly<Record<string, Json>> } | { readonly faults: readonly FigureFault[] } {
  const faults: FigureFault[] = [];
  const tree: Tree = new Map();
  const given = component.fields.filter(({ path }) => (typed[path] ?? "").trim() !== "");
  for (const field of component.fields) {
    if (!given.includes(field)) {
      if (field.isRequired) faults.push(missing(component, field));
      continue;
    }
    const read = readFigure(field, (typed[field.path] ?? "").trim());
    if ("fault" in read) faults.push({ path: field.path, sentence: read.fault });
    else place(tree, field.path, read.value);
  }
  if (faults.length > 0) return { faults };
  for (const { path, value } of component.constants)
    if (given.some((field) => field.path.startsWith(parentOf(path)))) place(tree, path, value);
  return { figures: plain(tree) as Readonly<Record<string, Json>> }; // The outermost steps are names.
}

function missing(component: Component, { path, label }: FigureField): FigureFault {
  return { path, sentence: `${label}: needed of every item that is “${component.name}”. Fill it in.` };
}

const parentOf = (path: string) => path.slice(0, path.lastIndexOf(".") + 1);

function place(tree: Tree, path: string, value: Json): void {
  const steps = path.split(".");
  const last = steps.pop() ?? "";
  let at = tree;
  for (const step of steps) {
    const inner = at.get(step);
    const next = inner instanceof Map ? inner : new Map<string, Tree | Json>();
    at.set(step, next);
    at = next;
  }
  at.set(last, value);
}

/** Where all steps are places in a list, it is one. */
function plain(tree: Tree): Json {
  const entries = [...tree].map(([step, value]): [string, Json] => [
    step,
    value instanceof Map ? plain(value) : value,
  ]);
  const isList = entries.length > 0 && entries.every(([step]) => /^\d+$/.test(step));
  return isList ? entries.map(([, value]) => value) : Object.fromEntries(entries);
}
