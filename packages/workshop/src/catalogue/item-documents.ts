import { sniffFile } from "@buildproof/documents";
import { z } from "zod";
import { atField } from "../core/at-field";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { keepFile } from "../paperwork/keep-file";
import { UploadedFile } from "../paperwork/uploaded-file";
import { refuseCatalogue } from "./refuse-catalogue";

const LARGEST_DOCUMENT_BYTES = 20 * 1024 * 1024;

/** Attaches a sheet, a drawing or a certificate to an item. It is there at once: it sells nothing. */
export const attachDocument = command({
  name: "catalogue.attach-document",
  permission: "catalogue:write",
  input: z.strictObject({
    code: z.string().max(60),
    title: z
      .string()
      .trim()
      .min(1, "Give the document a title.")
      .max(120, "Keep the title under 120 characters."),
    file: z.instanceof(UploadedFile, { error: "Choose a file to attach." }),
  }),
  async run(work, { code, title, file }) {
    const { tx, workshopId, person, now, audit } = work;
    const item = await tx.item.findUnique({ where: { workshopId_code: { workshopId, code } } });
    if (!item) return refuseCatalogue("part-not-found", { code });
    if (file.bytes.byteLength === 0) return atField("file", refuseCatalogue("document-empty"));
    if (file.bytes.byteLength > LARGEST_DOCUMENT_BYTES)
      return atField("file", refuseCatalogue("document-too-large"));
    const mediaType = await sniffFile(file.bytes);
    if (!mediaType) return atField("file", refuseCatalogue("document-kind"));
    const sha256 = await keepFile(work, { name: file.name, mediaType, bytes: file.bytes });
    const stored = await tx.storedFile.findUniqueOrThrow({
      where: { workshopId_sha256: { workshopId, sha256 } },
    });
    const key = { itemId_fileId: { itemId: item.id, fileId: stored.id } };
    if (await tx.itemDocument.findUnique({ where: key }))
      return atField("file", refuseCatalogue("document-there"));
    const id = newId();
    await tx.itemDocument.create({
      data: { id, workshopId, itemId: item.id, fileId: stored.id, title, addedById: person.id, addedAt: now },
    });
    audit({ entity: "item", entityId: item.id, after: { document: title, sha256 } });
    return ok({ documentId: id });
  },
});

/** Takes a document from an item; its bytes stay in the file store, because a job may point at them. */
export const removeDocument = command({
  name: "catalogue.remove-document",
  permission: "catalogue:write",
  input: z.strictObject({ documentId: z.uuid("Open the item again.") }),
  async run({ tx, audit }, { documentId }) {
    const document = await tx.itemDocument.findUnique({
      where: { id: documentId },
      include: { file: true },
    });
    if (!document) return refuseCatalogue("document-gone");
    await tx.itemDocument.delete({ where: { id: documentId } });
    const { itemId, title, file } = document;
    audit({ entity: "item", entityId: itemId, before: { document: title, sha256: file.sha256 } });
    return ok({ title });
  },
});
