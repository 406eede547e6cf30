import { exportCatalogue, type PartKind, partKinds, perform } from "@buildproof/workshop";
import type { NextRequest } from "next/server";
import { refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** The whole catalogue as a document, or one part of it as a table. */
export async function GET(request: NextRequest): Promise<Response> {
  const asked = request.nextUrl.searchParams.get("part");
  const part = partKinds.find((kind) => kind === asked) ?? null;
  const result = await perform(await requestContext(), exportCatalogue, {
    part: asked === null ? null : (part ?? (asked as PartKind)), // What is no part is for the use case to refuse.
  });
  if (!result.ok) return refusedResponse(result.refusal);
  const { name, mediaType, text } = result.value;
  return new Response(text, {
    headers: {
      "Content-Type": mediaType,
      "Content-Disposition": `attachment; filename="${name}"`,
      "Cache-Control": "private, no-store",
    },
  });
}
