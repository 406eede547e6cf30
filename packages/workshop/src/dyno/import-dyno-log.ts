import type { Context } from "../core/context";
import { perform } from "../core/perform";
import type { Result } from "../core/result";
import { admitDynoImport } from "./admit-import";
import { type DynoUploadSource, readUpload } from "./read-upload";
import { type ImportedSession, recordDynoSession } from "./record-session";

/**
 * Takes a log from its stream to a kept session. The set-up is judged before the stream is touched, the file
 * outside any transaction, and session, runs and file are kept together; whatever stops it, nothing is left
 * half-imported.
 */
export async function importDynoLog(
  context: Context,
  setUp: unknown,
  source: DynoUploadSource,
  options: { readonly key?: string } = {},
): Promise<Result<ImportedSession>> {
  const admitted = await perform(context, admitDynoImport, setUp);
  if (!admitted.ok) return admitted;
  if (context.actor.kind === "nobody") throw new Error("nobody was admitted");
  const incoming = await context.files.receive(context.actor.workshopId);
  try {
    const upload = await readUpload(source, incoming);
    if (!upload.ok) return upload;
    return await perform(context, recordDynoSession, { ...asObject(setUp), upload: upload.value }, options);
  } finally {
    await incoming.discard();
  }
}

function asObject(setUp: unknown): object {
  return typeof setUp === "object" && setUp !== null ? setUp : {};
}
