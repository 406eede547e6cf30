import { readNumber } from "@/design/read-number";

/** The number in a field: undefined when it is empty, not-a-number when it cannot be read. */
export function typedFigure(typed: FormDataEntryValue | null): number | undefined {
  if (typeof typed !== "string" || typed.trim() === "") return undefined;
  const read = readNumber(typed);
  return read.ok ? read.value : Number.NaN;
}
