import { readNumber } from "@/design/read-number";

type Typed = Readonly<Record<string, string | undefined>>;

/** The fields of a goal, as the address carries them. */
const fields = ["power", "tow", "by", "budget"] as const;

/** Whether the form was sent, even with nothing in it. */
export function isAsked(typed: Typed): boolean {
  return fields.some((field) => typed[field] !== undefined);
}

/** What was typed, as the use case takes it. Money is typed in the large unit, with tax. */
export function goalOfAddress(typed: Typed) {
  const budget = figureOf(typed.budget);
  return {
    powerKw: figureOf(typed.power),
    towKg: figureOf(typed.tow),
    by: (typed.by ?? "").trim() === "" ? null : (typed.by ?? ""),
    budgetMinor: budget === null ? null : Math.round(budget * 100),
  };
}

/** Null for an empty field; NaN for what is no figure, for the use case to refuse in its own words. */
function figureOf(text: string | undefined): number | null {
  if (text === undefined || text.trim() === "") return null;
  const read = readNumber(text);
  return read.ok ? read.value : Number.NaN;
}
