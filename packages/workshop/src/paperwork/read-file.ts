import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { refuse } from "./paperwork-refusals";

/** The bytes of a kept file of this workshop, with what they are. */
export const readFile = query({
  name: "files.read",
  permission: "jobs:read",
  input: z.strictObject({ sha256: z.string().regex(/^[0-9a-f]{64}$/, "This is no address of a file.") }),
  async run({ tx, workshopId, files }, { sha256 }) {
    const row = await tx.storedFile.findUnique({ where: { workshopId_sha256: { workshopId, sha256 } } });
    if (!row) return refuse("file-not-found");
    const { name, mediaType } = row;
    return ok({ name, mediaType, bytes: await files.read(workshopId, sha256) });
  },
});
