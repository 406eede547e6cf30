import { perform, versionPdf } from "@buildproof/workshop";
import { pdfResponse, refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** A version as a PDF, for people of the workshop. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly versionId: string }> },
): Promise<Response> {
  const { versionId } = await params;
  const result = await perform(await requestContext(), versionPdf, { versionId });
  return result.ok ? pdfResponse(result.value) : refusedResponse(result.refusal);
}
