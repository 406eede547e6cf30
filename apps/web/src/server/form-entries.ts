import { readNumber } from "@/design/read-number";

/** What was typed into a field; nothing when the field was not sent. */
export function textOf(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
}

/** A figure as people type it ("24,310"); NaN when it is none, for the use case to refuse in its own words. */
export function numberOf(form: FormData, name: string): number {
  const read = readNumber(textOf(form, name));
  return read.ok ? read.value : Number.NaN;
}

/** A field that may stay empty: null then. */
export function orNull<Value>(form: FormData, name: string, read: (form: FormData, name: string) => Value) {
  return textOf(form, name).trim() === "" ? null : read(form, name);
}

/** All ticks of a group. */
export function ticksOf(form: FormData, name: string): readonly string[] {
  return form.getAll(name).filter((value) => typeof value === "string");
}

export function isTicked(form: FormData, name: string): boolean {
  return form.get(name) !== null;
}
