/** Why a question was not answered. The same object on the command line and over HTTP. */
export type CalculationError = {
  /** For programs: unknown-calculation, not-json, unknown-field, missing-field, invalid-field, or the calculation's own. */
  readonly code: string;
  /** One sentence that says what to do. */
  readonly message: string;
  /** Where in the input, such as lines[0].quantity; empty for the whole. */
  readonly path: string;
};

export type CalculationAnswer =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly error: CalculationError };

export function failure(code: string, message: string, path = ""): CalculationAnswer {
  return { ok: false, error: { code, message, path } };
}
