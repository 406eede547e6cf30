import { createHash, randomUUID } from "node:crypto";
import { mkdir, open, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** Where bytes live, addressed by their SHA-256 (FIPS 180-4) in lower-case hex. */
export type FileStore = {
  /** Keeps the bytes and answers their address. Keeping the same bytes twice is one file. */
  keep(workshopId: string, bytes: Uint8Array): Promise<string>;
  /** Takes a file in piece by piece, for what is too large to hold at once. */
  receive(workshopId: string): Promise<IncomingFile>;
  /** Throws when no such file is kept. */
  read(workshopId: string, sha256: string): Promise<Uint8Array>;
};

/** A file on its way into the store. It is there whole once kept, and leaves nothing behind when discarded. */
export type IncomingFile = {
  write(chunk: Uint8Array): Promise<void>;
  /** Ends the writing and answers what has come. Write nothing after it. */
  seal(): Promise<{ readonly sha256: string; readonly sizeBytes: number }>;
  /** Keeps what was sealed under its address. */
  keep(): Promise<void>;
  /** Removes what has come, unless it was kept. Harmless afterwards and more than once. */
  discard(): Promise<void>;
};

/** Files in a folder beside the database: `<workshop>/<first two digits>/<sha256>`. */
export function folderFileStore(folder: string): FileStore {
  const placeOf = (workshopId: string, sha256: string) => join(folder, workshopId, sha256.slice(0, 2));
  return {
    async keep(workshopId, bytes) {
      const sha256 = createHash("sha256").update(bytes).digest("hex");
      const place = placeOf(workshopId, sha256);
      await mkdir(place, { recursive: true });
      // Written beside and renamed, so that a file is whole or absent whatever stops us.
      const draft = join(place, `${sha256}.${process.pid}.${Date.now()}.part`);
      await writeFile(draft, bytes);
      await rename(draft, join(place, sha256));
      return sha256;
    },
    receive: (workshopId) => receiveInto(join(folder, workshopId), (sha256) => placeOf(workshopId, sha256)),
    async read(workshopId, sha256) {
      if (!/^[0-9a-f]{64}$/.test(sha256)) throw new RangeError("not a SHA-256 address");
      const bytes = await readFile(join(placeOf(workshopId, sha256), sha256));
      if (createHash("sha256").update(bytes).digest("hex") !== sha256)
        throw new Error(`file ${sha256} is damaged`);
      return bytes;
    },
  };
}

async function receiveInto(folder: string, placeOf: (sha256: string) => string): Promise<IncomingFile> {
  await mkdir(folder, { recursive: true });
  const draft = join(folder, `${randomUUID()}.part`);
  const handle = await open(draft, "wx");
  const hash = createHash("sha256");
  let sizeBytes = 0;
  let sealed: { readonly sha256: string; readonly sizeBytes: number } | null = null;
  const close = () => handle.close().catch(() => undefined); // Closed already is closed.
  return {
    async write(chunk) {
      hash.update(chunk);
      sizeBytes += chunk.byteLength;
      await handle.writeFile(chunk);
    },
    async seal() {
      await close();
      sealed ??= { sha256: hash.digest("hex"), sizeBytes };
      return sealed;
    },
    async keep() {
      if (!sealed) throw new Error("a file is kept once it is sealed");
      const place = placeOf(sealed.sha256);
      await mkdir(place, { recursive: true });
      await rename(draft, join(place, sealed.sha256));
    },
    async discard() {
      await close();
      await rm(draft, { force: true });
    },
  };
}
