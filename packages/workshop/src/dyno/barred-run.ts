/** How an exclusion begins that nobody may lift: the operator should have lifted, and did not. */
export const PAST_A_LIMIT = "Past an abort limit: ";

/** The other one: something slipped or shifted, so the run says nothing of the engine. */
export const VOID = "Void: ";

/** Whether a run is left out for good. */
export function isBarred(excludedBecause: string | null): boolean {
  return [PAST_A_LIMIT, VOID].some((beginning) => excludedBecause?.startsWith(beginning));
}
