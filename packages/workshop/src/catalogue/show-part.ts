import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { ok } from "../core/result";
import { isoDateOf } from "../core/site-date";
import { query } from "../core/use-case";
import type { CatalogueNames } from "./catalogue-names";
import { changeInWords } from "./change-words";
import { contentWords } from "./content-words";
import { type ContentOf, type PartChange, type PartKind, partKind } from "./part-content";
import { readCatalogueState } from "./read-catalogue-state";
import { storedChange } from "./read-version";
import { refuseCatalogue } from "./refuse-catalogue";
import { ruleSentence } from "./rule-sentence";
import { wordsFor } from "./words-for";

/** One part of the catalogue: as it stands, in which drafts it is changed, and what became of it over time. */
export const showPart = query({
  name: "catalogue.show-part",
  permission: "catalogue:read",
  input: z.strictObject({ part: partKind, code: z.string().max(60) }),
  async run({ tx, person }, { part, code }) {
    const state = await readCatalogueState(tx);
    const standing = state.parts[part].get(code) ?? null;
    const retired = part === "item" ? (state.retired.get(code) ?? null) : null;
    const rows = await tx.catalogueChange.findMany({
      where: { part, code },
      include: { version: { include: { createdBy: true, publishedBy: true } } },
      orderBy: { changedAt: "desc" },
    });
    if (!standing && !retired && rows.length === 0) return refuseCatalogue("part-not-found", { code });
    const changes = rows.map((row) => ({ version: row.version, change: storedChange(row) }));
    const on = await wordsFor(
      tx,
      person,
      state,
      changes.map(({ change }) => change),
    );
    const content = standing ?? retired;
    return ok({
      part,
      code,
      name: nameOf(part, content ?? firstContent(changes), on.names),
      stands: standing !== null,
      said: content ? contentWords(part, content, on) : [],
      documents: part === "item" ? await readDocuments(tx, code) : [],
      /** The newest first; what is not published yet stands before it. */
      history: changes
        .toSorted((a, b) => order(b.version) - order(a.version))
        .map(({ version, change }) => ({
          versionId: version.id,
          number: version.number,
          title: version.title,
          state: version.state,
          on: version.publishOn ? isoDateOf(version.publishOn) : null,
          at: version.publishedAt ?? version.createdAt,
          by: (version.publishedBy ?? version.createdBy).name,
          ...changeInWords(change, on),
        })),
    });
  },
});

type Changed = {
  readonly version: { readonly number: number | null; readonly createdAt: Date };
  readonly change: PartChange;
};

function nameOf(part: PartKind, content: ContentOf<PartKind> | null, names: CatalogueNames): string {
  if (!content) return "";
  if (part === "rule") return ruleSentence(content as ContentOf<"rule">, names); // It was read as that part.
  return "name" in content ? content.name : "";
}

function firstContent(changes: readonly Changed[]): ContentOf<PartKind> | null {
  return (
    changes.map(({ change }) => change.after ?? change.before).find((content) => content !== null) ?? null
  );
}

const order = ({ number, createdAt }: Changed["version"]) => number ?? 1e9 + createdAt.getTime() / 1e6;

async function readDocuments(tx: Transaction, code: string) {
  const rows = await tx.itemDocument.findMany({
    where: { item: { code } },
    include: { file: true },
    orderBy: { addedAt: "asc" },
  });
  return rows.map(({ id, title, file }) => ({
    id,
    title,
    sha256: file.sha256,
    mediaType: file.mediaType,
    sizeBytes: Number(file.sizeBytes),
  }));
}
