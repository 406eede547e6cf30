import { perform, receiptPdf } from "@buildproof/workshop";
import { pdfResponse, refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** The receipt of one payment as a PDF. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly paymentId: string }> },
): Promise<Response> {
  const { paymentId } = await params;
  const result = await perform(await requestContext(), receiptPdf, { paymentId });
  return result.ok ? pdfResponse(result.value) : refusedResponse(result.refusal);
}
