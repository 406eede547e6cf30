import type { Refusal } from "./result";

/** A refusal about one field of a form: the screen shows the sentence there. */
export function atField<Refused extends { readonly refusal: Refusal }>(
  field: string,
  refused: Refused,
): Refused {
  return { ...refused, refusal: { ...refused.refusal, field } };
}
