/** What a use case answers: the value, or the reason in words that the person can act on. */
export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusal: Refusal };

/** A refusal is a fact (code, data) with its sentence; screens show the sentence and tests look at the code. */
export type Refusal = {
  readonly code: string;
  readonly sentence: string;
  /** The input field it concerns, where there is one. */
  readonly field?: string;
  readonly data?: unknown;
};

export function ok<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

type Sentences = Readonly<Record<string, (data: never) => string>>;

/**
 * The refusals of one stage of the job, each with its sentence in one place.
 * `const refuse = refusals({ "quote-lapsed": (d: { on: string }) => \`It lapsed on ${d.on}.\` })`
 * then `return refuse("quote-lapsed", { on })`.
 */
export function refusals<Table extends Sentences>(table: Table) {
  return <Code extends keyof Table & string>(
    code: Code,
    ...data: Parameters<Table[Code]>[0] extends undefined ? [] : [data: Parameters<Table[Code]>[0]]
  ): { readonly ok: false; readonly refusal: Refusal } => {
    const write = table[code] as (data: unknown) => string; // The tuple above already tied the data to the code.
    const facts = data[0];
    return {
      ok: false,
      refusal: { code, sentence: write(facts), ...(facts === undefined ? {} : { data: facts }) },
    };
  };
}
