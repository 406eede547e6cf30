import { perform, readFile } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** Bytes that belong to the workshop of whoever is signed in. Their kind is what was found in them, never guessed. */
export async function GET(
  _request: Request,
  { params }: { readonly params: Promise<{ sha256: string }> },
): Promise<Response> {
  const { sha256 } = await params;
  const result = await perform(await requestContext(), readFile, { sha256 });
  if (!result.ok) {
    const { code, sentence } = result.refusal;
    const status = code === "not-signed-in" || code === "session-over" ? 401 : 404;
    return new Response(`${sentence}\n`, {
      status,
      headers: { "Content-Type": "text/plain; charset=utf-8" },
    });
  }
  const { name, mediaType, bytes } = result.value;
  return new Response(new Uint8Array(bytes), {
    headers: {
      "Content-Type": mediaType,
      "Content-Disposition": `${shown(mediaType)}; filename*=UTF-8''${encodeURIComponent(name)}`,
      "Content-Length": String(bytes.byteLength),
      "X-Content-Type-Options": "nosniff",
      // The address is the content's own hash, so it never changes; but it is nobody else's to keep.
      "Cache-Control": "private, max-age=31536000, immutable",
    },
  });
}

/** Pictures and PDFs are looked at; everything else is saved. */
function shown(mediaType: string): "inline" | "attachment" {
  return mediaType.startsWith("image/") || mediaType === "application/pdf" ? "inline" : "attachment";
}
