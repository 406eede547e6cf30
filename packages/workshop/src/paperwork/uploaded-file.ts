import { createHash } from "node:crypto";

/**
 * A file on its way in. Where a request is fingerprinted or logged it stands for itself by its hash, so that
 * twenty megabytes are never written out as text.
 */
export class UploadedFile {
  constructor(
    readonly name: string,
    readonly bytes: Uint8Array,
  ) {}

  toJSON(): { readonly name: string; readonly sha256: string } {
    return { name: this.name, sha256: createHash("sha256").update(this.bytes).digest("hex") };
  }
}
