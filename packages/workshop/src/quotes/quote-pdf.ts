import { quotePdf } from "@buildproof/documents";
import { z } from "zod";
import { ok } from "../core/result";
import { linkQuery, query } from "../core/use-case";
import { quoteDocument } from "./quote-document";
import { refuse } from "./refuse-quote";
import { type VersionContent, versionContent } from "./version-content";

/** A version as a PDF, for the desk: drafts too, which say that they are drafts. */
export const versionPdf = query({
  name: "quotes.version-pdf",
  permission: "quotes:read",
  input: z.strictObject({ versionId: z.uuid() }),
  async run({ tx, now }, { versionId }) {
    const version = await versionContent(tx, versionId, now);
    return version ? ok(await paperOf(version)) : refuse("version-not-found");
  },
});

/** The version that a link opens, as a PDF. */
export const letterPdf = linkQuery({
  name: "quotes.letter-pdf",
  permission: "link:read",
  input: z.strictObject({}),
  async run({ tx, actor, now }) {
    if (actor.kind !== "customer") throw new Error("a customer's use case ran without a link");
    const version = await versionContent(tx, actor.versionId, now);
    return version ? ok(await paperOf(version)) : refuse("version-not-found");
  },
});

async function paperOf(version: VersionContent) {
  return {
    bytes: await quotePdf(quoteDocument(version)),
    fileName: `quote-${version.number}-version-${version.versionNo}.pdf`,
  };
}
