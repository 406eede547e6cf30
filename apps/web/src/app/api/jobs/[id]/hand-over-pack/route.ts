import { handOverPack, perform } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** The hand-over pack of a job, as a PDF. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await params;
  const result = await perform(await requestContext(), handOverPack, { jobId: id });
  if (!result.ok) {
    const { code, sentence } = result.refusal;
    const status = code === "not-signed-in" || code === "session-over" ? 401 : 404;
    return new Response(`${sentence}\n`, {
      status,
      headers: { "Content-Type": "text/plain; charset=utf-8" },
    });
  }
  const { bytes, fileName } = result.value;
  return new Response(new Uint8Array(bytes), {
    headers: {
      "Content-Type": "application/pdf",
      "Content-Disposition": `inline; filename="${fileName}"`,
      "Cache-Control": "private, no-cache",
    },
  });
}
