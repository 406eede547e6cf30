import {
  keepPhoto,
  MAX_PHOTO_BYTES,
  perform,
  type Refusal,
  raiseFault,
  recordStep,
  reopenStep,
  startClock,
  stopClock,
  UploadedFile,
  type UseCase,
} from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

// Each takes its own input, and looks at it itself.
const useCases = new Map<string, UseCase>([
  ["record-step", recordStep as unknown as UseCase],
  ["reopen-step", reopenStep as unknown as UseCase],
  ["raise-fault", raiseFault as unknown as UseCase],
  ["start-clock", startClock as unknown as UseCase],
  ["stop-clock", stopClock as unknown as UseCase],
]);

/** One entry of a device on the floor, with its photo if it has one. Sent twice under one key, it acts once. */
export async function POST(request: Request): Promise<Response> {
  const tooLarge = Number(request.headers.get("content-length") ?? 0) > MAX_PHOTO_BYTES + 64 * 1024;
  if (tooLarge)
    return refused({
      code: "photo-too-large",
      sentence: "This photo is larger than 15 MB. Take it again at a smaller size.",
    });
  const form = await request.formData().catch(() => null);
  const key = form?.get("key");
  const useCase = useCases.get(String(form?.get("use")));
  const input = asObject(form?.get("input"));
  if (!form || !useCase || !input || typeof key !== "string" || !isUuid(key)) {
    return refused({
      code: "not-an-entry",
      sentence: "This is no entry of a job card. Open the card again.",
    });
  }
  const context = await requestContext();
  const photo = form.get("photo");
  if (photo instanceof File && photo.size > 0) {
    const file = new UploadedFile(photo.name, new Uint8Array(await photo.arrayBuffer()));
    const kept = await perform(context, keepPhoto, { file });
    if (!kept.ok) return refused({ ...kept.refusal, field: "photo" });
    input.photoSha256 = kept.value.sha256;
  }
  const result = await perform(context, useCase, input, { key });
  if (!result.ok) return refused(result.refusal);
  return Response.json({ ok: true, value: result.value, at: context.now().toISOString() });
}

/** A refusal is an answer like any other: the device shows its sentence. */
function refused({ code, sentence, field }: Refusal): Response {
  return Response.json({ ok: false, refusal: { code, sentence, ...(field === undefined ? {} : { field }) } });
}

function isUuid(text: string): boolean {
  return /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(text);
}

function asObject(text: unknown): Record<string, unknown> | null {
  if (typeof text !== "string") return null;
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value) ? { ...value } : null;
  } catch {
    return null;
  }
}
