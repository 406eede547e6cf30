/** A block as a form carries it, under its number. */
export function typedBlock(form: FormData, key: string) {
  const text = (name: string) => String(form.get(`${name}.${key}`) ?? "");
  return {
    resourceId: text("resourceId"),
    startsAt: text("startsAt"),
    endsAt: text("endsAt"),
    work: text("work"),
  };
}

/** The blocks that name a resource; a row left at "not needed" is none. */
export function typedBlocks(form: FormData) {
  const keys = [...form.keys()]
    .filter((name) => name.startsWith("resourceId."))
    .map((name) => name.slice("resourceId.".length));
  return keys.map((key) => typedBlock(form, key)).filter(({ resourceId }) => resourceId !== "");
}

/** The points that were given a reason. */
export function typedOverrides(form: FormData) {
  return [...form.entries()].flatMap(([name, value]) =>
    name.startsWith("override.") && typeof value === "string" && value.trim() !== ""
      ? [{ point: name.slice("override.".length), reason: value }]
      : [],
  );
}
