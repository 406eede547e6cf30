import { sniffFile } from "@buildproof/documents";
import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuse } from "../floor/floor-refusals";
import { keepFile } from "../paperwork/keep-file";
import { UploadedFile } from "../paperwork/uploaded-file";

/** 15 MB: what a telephone's camera makes at its largest, and some. */
export const MAX_PHOTO_BYTES = 15 * 1024 * 1024;

/** Keeps a photo by its bytes, whatever the file is called. Kept twice, it is one file. */
export const keepPhoto = command({
  name: "files.keep-photo",
  permission: "check-in:write",
  input: z.strictObject({ file: z.instanceof(UploadedFile, { error: "Take a photo first." }) }),
  async run(work, { file }) {
    const { bytes } = file;
    if (bytes.byteLength > MAX_PHOTO_BYTES) return refuse("photo-too-large");
    const mediaType = await sniffFile(bytes);
    if (!mediaType?.startsWith("image/")) return refuse("not-an-image");
    const sha256 = await keepFile(work, { name: file.name.slice(0, 200) || "photo", mediaType, bytes });
    const { id } = await work.tx.storedFile.findUniqueOrThrow({
      where: { workshopId_sha256: { workshopId: work.workshopId, sha256 } },
      select: { id: true },
    });
    work.audit({ entity: "file", entityId: id, after: { sha256, mediaType } });
    return ok({ sha256, mediaType });
  },
});
