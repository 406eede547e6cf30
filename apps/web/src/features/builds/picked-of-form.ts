/** What was picked among the choices of a package, out of its fields. */
export function pickedOfForm(form: FormData): string[] {
  const picked: string[] = [];
  for (const [name, value] of form)
    if (name.startsWith("choice.") && typeof value === "string" && value !== "none") picked.push(value);
  return picked;
}

/** Whether a package asks or offers anything before it can be taken. */
export function asksAnything(offered: {
  readonly choices: readonly unknown[];
  readonly options: readonly unknown[];
}) {
  return offered.choices.length > 0 || offered.options.length > 0;
}
