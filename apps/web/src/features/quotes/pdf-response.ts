import type { Refusal } from "@buildproof/workshop";

/** A PDF that opens in the browser and is saved under its own name; never kept by what lies between. */
export function pdfResponse({
  bytes,
  fileName,
}: {
  readonly bytes: Uint8Array;
  readonly fileName: string;
}): Response {
  return new Response(new Uint8Array(bytes), {
    headers: {
      "Content-Type": "application/pdf",
      "Content-Disposition": `inline; filename="${fileName}"`,
      "Content-Length": String(bytes.byteLength),
      "Cache-Control": "private, no-store",
    },
  });
}

/** Why there is no PDF, in words. */
export function refusedResponse({ code, sentence }: Refusal): Response {
  return new Response(`${sentence}\n`, {
    status: statusOf(code),
    headers: { "Content-Type": "text/plain; charset=utf-8", "Cache-Control": "no-store" },
  });
}

function statusOf(code: string): number {
  if (code === "not-signed-in" || code === "session-over") return 401;
  if (code === "not-allowed") return 403;
  if (code.endsWith("-not-found") || code === "link-not-valid") return 404;
  return code === "database-away" ? 503 : 400;
}
