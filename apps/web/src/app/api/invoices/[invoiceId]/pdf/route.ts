import { invoicePdf, perform } from "@buildproof/workshop";
import { pdfResponse, refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** An invoice or credit note as a PDF. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly invoiceId: string }> },
): Promise<Response> {
  const { invoiceId } = await params;
  const result = await perform(await requestContext(), invoicePdf, { invoiceId });
  return result.ok ? pdfResponse(result.value) : refusedResponse(result.refusal);
}
