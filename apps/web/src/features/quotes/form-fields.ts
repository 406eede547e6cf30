/** What a form sent under a name, as text; nothing is an empty text. */
export function text(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
}

/** The state that the person had before their eyes. */
export function seenVersion(form: FormData) {
  return { versionId: text(form, "versionId"), revision: Number(text(form, "revision")) };
}
