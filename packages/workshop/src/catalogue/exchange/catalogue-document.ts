import { z } from "zod";
import type { CatalogueParts, PartKind } from "../part-content";
import { partFiles } from "./part-tables";

const format = "buildproof-catalogue";

/** The version of the document that is written; a change that an older reader would misread raises it. */
const documentVersion = 1;

const list = z.array(z.looseObject({ code: z.string("Each entry has a code.") })).optional();

/** The whole catalogue in one JSON document: docs/guide/catalogue-files.md. Amounts are whole minor units. */
export const catalogueDocument = z.strictObject({
  format: z.literal(format, `The document says that its format is ${format}.`),
  version: z.literal(documentVersion, `Only version ${documentVersion} of the document is read.`),
  currency: z.string("The document says in which currency its amounts are."),
  madeAt: z.string().optional(),
  parts: z.strictObject({
    accessWork: list,
    operations: list,
    items: list,
    groups: list,
    rules: list,
    packages: list,
  } satisfies Record<(typeof partFiles)[PartKind], typeof list>),
});

export function writeDocument(parts: CatalogueParts, currency: string, madeAt: Date): string {
  const lists = Object.entries(partFiles).map(([part, name]) => [
    name,
    // The keys of the table are the parts.
    [...parts[part as PartKind]].map(([code, content]) => ({ code, ...content })),
  ]);
  const document = {
    format,
    version: documentVersion,
    currency,
    madeAt: madeAt.toISOString(),
    parts: Object.fromEntries(lists),
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}
