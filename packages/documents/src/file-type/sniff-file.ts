import { fileTypeFromBuffer } from "file-type";

export const acceptedMediaTypes = [
  "image/jpeg",
  "image/png",
  "image/webp",
  "image/heic",
  "application/pdf",
] as const;

export type AcceptedMediaType = (typeof acceptedMediaTypes)[number];

/** What the bytes are, whatever the file is called; null for anything that the workshop does not take. */
export async function sniffFile(bytes: Uint8Array): Promise<AcceptedMediaType | null> {
  const found = await fileTypeFromBuffer(bytes).catch(() => undefined);
  return acceptedMediaTypes.find((type) => type === found?.mime) ?? null;
}
