/** A line of the form as typed. */
export function typedText(form: FormData, name: string): string {
  const typed = form.get(name);
  return typeof typed === "string" ? typed : "";
}

/** The ticks as sent; the use case knows which exist. */
export function typedDuties(form: FormData): { readonly roles: never[]; readonly skills: never[] } {
  // Text until the use case has parsed it: the schema's input type names the words that it will take.
  return { roles: form.getAll("roles") as never[], skills: form.getAll("skills") as never[] };
}
