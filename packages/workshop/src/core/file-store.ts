import { createHash } from "node:crypto";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** Where bytes live, addressed by their SHA-256 (FIPS 180-4) in lower-case hex. */
export type FileStore = {
  /** Keeps the bytes and answers their address. Keeping the same bytes twice is one file. */
  keep(workshopId: string, bytes: Uint8Array): Promise<string>;
  /** Throws when no such file is kept. */
  read(workshopId: string, sha256: string): Promise<Uint8Array>;
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
    async read(workshopId, sha256) {
      if (!/^[0-9a-f]{64}$/.test(sha256)) throw new RangeError("not a SHA-256 address");
      const bytes = await readFile(join(placeOf(workshopId, sha256), sha256));
      if (createHash("sha256").update(bytes).digest("hex") !== sha256)
        throw new Error(`file ${sha256} is damaged`);
      return bytes;
    },
  };
}
