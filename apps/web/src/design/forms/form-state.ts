/** Why a form was not taken, in words its reader can act on. */
export interface Refusal {
  /** One sentence that says what to do next. */
  readonly sentence: string;
  /** The field the sentence is about; it is shown there and focused. */
  readonly field?: string;
  /** Sentences for further fields, by field name. */
  readonly fields?: Readonly<Record<string, string>>;
  /** Every unmet point, where one sentence cannot hold them (the booking gate). */
  readonly points?: readonly string[];
}

export type TypedValues = Readonly<Record<string, string | readonly string[]>>;

/** What a form's server action answers. */
export type FormState =
  | { readonly status: "idle" }
  | { readonly status: "saved"; readonly message?: string }
  | { readonly status: "refused"; readonly refusal: Refusal; readonly values?: TypedValues };

export type FormAction = (previous: FormState, form: FormData) => Promise<FormState>;

export const idleForm: FormState = { status: "idle" };

export function savedForm(message?: string): FormState {
  return message === undefined ? { status: "saved" } : { status: "saved", message };
}

/** Refuses, and hands back what was typed so that it is still there when the page is drawn anew. */
export function refusedForm(refusal: Refusal, form?: FormData): FormState {
  return form ? { status: "refused", refusal, values: typedValues(form) } : { status: "refused", refusal };
}

/** What was typed: no files, no passwords, none of the framework's own fields. */
export function typedValues(form: FormData): TypedValues {
  const values: Record<string, string | string[]> = {};
  for (const name of new Set(form.keys())) {
    if (name.startsWith("$") || /password/i.test(name)) continue;
    const typed = form.getAll(name).filter((value) => typeof value === "string");
    const [first] = typed;
    if (first !== undefined) values[name] = typed.length > 1 ? typed : first;
  }
  return values;
}

/** The sentences by field name, the main one included. */
export function fieldSentences(refusal: Refusal): Record<string, string> {
  return refusal.field === undefined
    ? { ...refusal.fields }
    : { ...refusal.fields, [refusal.field]: refusal.sentence };
}

interface ParseIssue {
  readonly path: readonly PropertyKey[];
  readonly message: string;
}

/** Turns the issues of a failed parse into a refusal: the first is the sentence, each is shown at its field. */
export function refusalFromIssues(issues: readonly ParseIssue[]): Refusal {
  const fields: Record<string, string> = {};
  for (const issue of issues) {
    const name = issue.path.map(String).join(".");
    if (name !== "") fields[name] ??= issue.message;
  }
  const [first] = issues;
  const sentence = first?.message ?? "Check the entries and send the form again.";
  const field = first?.path.map(String).join(".");
  return field ? { sentence, field, fields } : { sentence, fields };
}
