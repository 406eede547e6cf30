import { keepPhoto, MAX_PHOTO_BYTES, perform, type Refusal, UploadedFile } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** Keeps one photo as soon as it is taken, so that the form it belongs to stays small and nothing is taken twice. */
export async function POST(request: Request): Promise<Response> {
  if (Number(request.headers.get("content-length") ?? 0) > MAX_PHOTO_BYTES + 64 * 1024)
    return refused({
      code: "photo-too-large",
      sentence: "This photo is larger than 15 MB. Take it again at a smaller size.",
    });
  const form = await request.formData().catch(() => null);
  const photo = form?.get("photo");
  if (!(photo instanceof File)) return refused({ code: "photo-missing", sentence: "Take a photo first." });
  const file = new UploadedFile(photo.name, new Uint8Array(await photo.arrayBuffer()));
  const result = await perform(await requestContext(), keepPhoto, { file });
  return result.ok ? Response.json({ ok: true, sha256: result.value.sha256 }) : refused(result.refusal);
}

function refused({ code, sentence }: Refusal): Response {
  return Response.json({ ok: false, refusal: { code, sentence } });
}
