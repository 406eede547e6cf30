import type { ImportedSession } from "@buildproof/workshop";
import type { Refusal } from "@/design/forms/form-state";

export type LogAnswer =
  | { readonly ok: true; readonly session: ImportedSession }
  | { readonly ok: false; readonly refusal: Refusal };

const BROKEN = "The connection broke before the log was in. Nothing was imported; send it again.";

/** Sends a log straight from the disk, saying how much of it is in. Never rejects: what went wrong is an answer. */
export function sendLog(
  fields: URLSearchParams,
  file: File,
  onProgress: (share: number) => void,
): Promise<LogAnswer> {
  fields.set("name", file.name);
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open("POST", `/api/dyno/import?${fields}`);
    request.setRequestHeader("Content-Type", "text/csv");
    request.responseType = "json";
    request.upload.onprogress = ({ loaded, total }) => onProgress(total === 0 ? 0 : loaded / total);
    request.onload = () => resolve(answerOf(request.response));
    request.onerror = () => resolve({ ok: false, refusal: { sentence: BROKEN } });
    request.send(file);
  });
}

function answerOf(body: unknown): LogAnswer {
  if (typeof body === "object" && body !== null) {
    // Our own route answers, in one of these two shapes.
    if ("session" in body) return { ok: true, session: body.session as ImportedSession };
    if ("refusal" in body) return { ok: false, refusal: body.refusal as Refusal };
  }
  return {
    ok: false,
    refusal: { sentence: "The workshop did not answer as it should. Nothing was imported; try again." },
  };
}
