import { newId } from "../core/new-id";
import type { Work } from "../core/use-case";

type Kept = { readonly name: string; readonly mediaType: string; readonly bytes: Uint8Array };

/** Keeps the bytes in the file store and their row beside them; the same bytes twice are one file. */
export async function keepFile(
  { tx, workshopId, files, now, person }: Pick<Work, "tx" | "workshopId" | "files" | "now" | "person">,
  { name, mediaType, bytes }: Kept,
): Promise<string> {
  const sha256 = await files.keep(workshopId, bytes);
  await tx.storedFile.createMany({
    data: [
      {
        id: newId(),
        workshopId,
        sha256,
        mediaType,
        sizeBytes: BigInt(bytes.byteLength),
        name,
        uploadedById: person?.id ?? null,
        at: now,
      },
    ],
    skipDuplicates: true,
  });
  return sha256;
}
