import { decodedText } from "@buildproof/documents";
import type { PartKind } from "../part-content";
import { partCode } from "../write-part";
import { catalogueDocument } from "./catalogue-document";
import type { ImportProblem, ReadEntry, ReadFile } from "./import-problem";
import { type ImportSetting, MOST_ROWS } from "./import-setting";
import { readContent } from "./part-table";
import { partFiles } from "./part-tables";

type NamedFile = { readonly name: string; readonly bytes: Uint8Array };

/** Reads a document of the whole catalogue, or of some of its parts. */
export function readDocument({ name, bytes }: NamedFile, { currency }: ImportSetting): ReadFile {
  const whole = (sentence: string, column: string | null = null): ReadFile => ({
    source: null,
    entries: [],
    problems: [{ file: name, row: null, column, sentence }],
  });
  const decoded = decodedText(bytes);
  const parsed = parsedJson(decoded?.text ?? "");
  if (!parsed.ok) return whole(`This is not whole JSON (${parsed.because}): export it again.`);
  const document = catalogueDocument.safeParse(parsed.value);
  if (!document.success) {
    const [issue] = document.error.issues;
    const sentence =
      issue && /[.!?]$/.test(issue.message) ? issue.message : "This is no document of a catalogue.";
    return whole(`${sentence} Compare it with an export of the catalogue.`, issue?.path.join(".") || null);
  }
  const { parts, currency: written } = document.data;
  if (written !== currency)
    return whole(
      `Its amounts are in ${written}, the workshop's in ${currency}: convert them first.`,
      "currency",
    );
  const kinds = (Object.keys(partFiles) as PartKind[]).filter((part) => parts[partFiles[part]] !== undefined);
  const rows = kinds.reduce((sum, part) => sum + (parts[partFiles[part]]?.length ?? 0), 0);
  if (rows > MOST_ROWS)
    return whole(`It has more than ${MOST_ROWS} entries: split it and import the pieces.`);
  const read = kinds.flatMap((part) =>
    (parts[partFiles[part]] ?? []).map((entry, index) => readEntry(name, part, entry, index + 1)),
  );
  return {
    source: {
      file: name,
      form: "JSON",
      encoding: decoded?.encoding ?? "UTF-8",
      delimiter: null,
      parts: kinds,
      rows,
    },
    entries: read.flatMap(({ entry }) => (entry ? [entry] : [])),
    problems: read.flatMap(({ problems }) => problems),
  };
}

function parsedJson(text: string) {
  try {
    return { ok: true, value: JSON.parse(text) as unknown } as const;
  } catch (error) {
    return { ok: false, because: error instanceof Error ? error.message : "unreadable" } as const;
  }
}

function readEntry(
  file: string,
  part: PartKind,
  { code, ...content }: { readonly code: string },
  row: number,
): { readonly entry: ReadEntry | null; readonly problems: readonly ImportProblem[] } {
  const at = (field: string, sentence: string): ImportProblem => ({
    file,
    row,
    column: `${partFiles[part]}: ${field}`,
    sentence,
  });
  const named = partCode.safeParse(code);
  const read = readContent(part, content);
  const problems = [
    ...(named.success ? [] : [at("code", named.error.issues[0]?.message ?? "Give it a code.")]),
    ...(read.ok ? [] : read.problems.map(({ field, sentence }) => at(field, sentence))),
  ];
  return {
    entry: named.success && read.ok ? { part, code: named.data, content: read.content, file, row } : null,
    problems,
  };
}
