import { type Cell, guard, unguard } from "./cell";

/** Codes one after the other, with a semicolon between them. */
export const codes = list("; ", (cell) => cell.split(";"));

/** Sentences, each on a line of its own within the cell. */
export const sentences = list("\n", (cell) => cell.split(/\r\n|\n|\r/));

/** A list whose entries would not come back as they were is written as JSON. */
function list(between: string, split: (cell: string) => readonly string[]): Cell<readonly string[]> {
  const plain = (cell: string) =>
    split(cell)
      .map((entry) => entry.trim())
      .filter((entry) => entry !== "");
  return {
    write(entries) {
      const joined = entries.join(between);
      const back = plain(joined);
      const comesBack =
        !joined.startsWith("[") &&
        back.length === entries.length &&
        back.every((entry, index) => entry === entries[index]);
      return guard(comesBack ? joined : JSON.stringify(entries));
    },
    read(cell) {
      const written = unguard(cell);
      if (!written.trim().startsWith("[")) return { ok: true, value: plain(written) };
      try {
        const entries: unknown = JSON.parse(written);
        if (Array.isArray(entries) && entries.every((entry) => typeof entry === "string"))
          return { ok: true, value: entries };
      } catch {
        // Said below, as for JSON of another shape.
      }
      return { ok: false, because: "This is no list: write its entries one after the other, or as JSON." };
    },
  };
}
