import type { z } from "zod";
import type { Limits } from "./limits";

/** What became of one input: an answer, or what is wrong with the input. */
type Attempt =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly issues: readonly z.core.$ZodIssue[] };

/** A calculation as the outside sees it: a line about it, what goes in, what comes out, and the doing. */
export type Calculation = {
  readonly summary: string;
  /** Numbers with more digits than a double holds are kept as text, because sums and comparisons are exact. */
  readonly readsExactDecimals: boolean;
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  /** Whether it searches, so that it may be told how long. */
  readonly isTimed: boolean;
  readonly attempt: (input: unknown, limits: Limits) => Promise<Attempt>;
};

type Definition<Input extends z.ZodType, Output extends z.ZodType> = {
  readonly summary: string;
  readonly readsExactDecimals?: boolean;
  readonly isTimed?: boolean;
  readonly input: Input;
  readonly output: Output;
  readonly run: (input: z.output<Input>, limits: Limits) => z.input<Output> | Promise<z.input<Output>>;
};

/** Ties schema and function together while their types are known, then forgets the types for the table. */
export function calculation<Input extends z.ZodType, Output extends z.ZodType>(
  definition: Definition<Input, Output>,
): Calculation {
  const { summary, readsExactDecimals = false, isTimed = false, input, output, run } = definition;
  return {
    summary,
    readsExactDecimals,
    isTimed,
    input,
    output,
    async attempt(given, limits) {
      const parsed = input.safeParse(given);
      return parsed.success
        ? { ok: true, value: await run(parsed.data, limits) }
        : { ok: false, issues: parsed.error.issues };
    },
  };
}
