import { perform, readDynoCertificate } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** The dyno certificate of a job, once its verdict is released. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await params;
  const result = await perform(await requestContext(), readDynoCertificate, { jobId: id });
  if (!result.ok) {
    const { code, sentence } = result.refusal;
    const isAway = code === "not-signed-in" || code === "session-over";
    return new Response(`${sentence}\n`, {
      status: isAway ? 401 : code === "verdict-not-released" ? 409 : 404,
      headers: { "Content-Type": "text/plain; charset=utf-8" },
    });
  }
  const { name, bytes } = result.value;
  return new Response(new Uint8Array(bytes), {
    headers: {
      "Content-Type": "application/pdf",
      "Content-Disposition": `inline; filename="${name}"`,
      "Content-Length": String(bytes.byteLength),
      "Cache-Control": "private, no-store",
    },
  });
}
