const prefix = "instead.";
const leftOut = "left-out";

/** What takes the place of each item that does not carry over, out of a form or an address. */
export function replacementsOf(entries: Iterable<readonly [string, unknown]>): Record<string, string | null> {
  const replacements: Record<string, string | null> = {};
  for (const [name, value] of entries)
    if (name.startsWith(prefix) && typeof value === "string" && value !== "")
      replacements[name.slice(prefix.length)] = value === leftOut ? null : value;
  return replacements;
}

export const replacementField = (code: string) => `${prefix}${code}`;

/** The choice that puts nothing in its place. */
export const leaveOut = { id: leftOut, label: "Leave it out" } as const;
