import type { Transaction } from "@buildproof/database";
import { decodedText } from "@buildproof/documents";
import { z } from "zod";
import type { Result } from "../../core/result";
import { ok } from "../../core/result";
import { readSite } from "../../core/site";
import { UploadedFile } from "../../paperwork/uploaded-file";
import { type PartChange, type PartKind, partKinds } from "../part-content";
import { readCatalogueState } from "../read-catalogue-state";
import { refuseCatalogue } from "../refuse-catalogue";
import { type Absent, fingerprintOf, importChanges } from "./import-changes";
import type { ReadFile } from "./import-problem";
import { type ImportReport, reportedParts, shownOf } from "./import-report";
import type { ImportSetting } from "./import-setting";
import { readDocument } from "./read-document";
import { readTable } from "./read-table";

/** 20 MB: a table of 50,000 rows, and some. */
export const LARGEST_IMPORT_BYTES = 20_000_000;

/** What both the report and the draft of an import are made from. */
export const importInput = {
  files: z
    .array(z.instanceof(UploadedFile, { error: "Choose the file to import." }))
    .min(1, "Choose the file to import.")
    .max(partKinds.length, `Choose at most ${partKinds.length} files: one for each part of the catalogue.`),
  /** What a table holds; null where its columns tell. */
  part: z.enum(partKinds).nullable().default(null),
  /** What becomes of what the files do not name. */
  absent: z.enum(["stay", "go"]).default("stay"),
};

type Asked = {
  readonly files: readonly UploadedFile[];
  readonly part: PartKind | null;
  readonly absent: Absent;
};

/** Reads the files against the catalogue as it stands and says what they would do to it. */
export async function readFiles(
  tx: Transaction,
  { files, part, absent }: Asked,
): Promise<Result<{ readonly report: ImportReport; readonly changes: readonly PartChange[] }>> {
  const bytes = files.reduce((sum, file) => sum + file.bytes.byteLength, 0);
  if (bytes > LARGEST_IMPORT_BYTES)
    return refuseCatalogue("import-too-large", { mostBytes: LARGEST_IMPORT_BYTES });
  const { currency } = await readSite(tx);
  const state = await readCatalogueState(tx);
  const rows = await tx.vehicleModel.findMany({ select: { code: true } });
  const models = new Set(rows.map(({ code }) => code));
  const setting = { state, currency, part, models };
  const read = files.map((file) => readFile(file, setting));
  const sources = read.flatMap(({ source }) => (source ? [source] : []));
  const unreadable = read.flatMap(({ problems }) => problems);
  const entries = read.flatMap((each) => each.entries);
  const parts = [...new Set(sources.flatMap((source) => source.parts))];
  // What could not be read is not there, so that whatever points at it would be blamed as well.
  const { changes, problems, same } = importChanges(
    entries,
    parts,
    unreadable.length > 0 ? "stay" : absent,
    setting,
  );
  const told =
    unreadable.length > 0 ? [...unreadable, ...problems.filter(({ column }) => column === "code")] : problems;
  return ok({
    changes,
    report: {
      sources,
      problems: shownOf(told, (problem) => problem),
      parts: reportedParts(changes, currency),
      same,
      fingerprint: fingerprintOf(changes),
    },
  });
}

function readFile({ name, bytes }: UploadedFile, setting: ImportSetting): ReadFile {
  // The first characters tell, whatever the file is called.
  const start = decodedText(bytes.subarray(0, 64))?.text.trimStart() ?? "";
  return /\.json$/i.test(name) || start.startsWith("{")
    ? readDocument({ name, bytes }, setting)
    : readTable({ name, bytes }, setting);
}
