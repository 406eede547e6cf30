import { invoiceXml, perform } from "@buildproof/workshop";
import { refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** An invoice as an electronic one, to be saved and sent on. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly invoiceId: string }> },
): Promise<Response> {
  const { invoiceId } = await params;
  const result = await perform(await requestContext(), invoiceXml, { invoiceId });
  if (!result.ok) return refusedResponse(result.refusal);
  return new Response(result.value.xml, {
    headers: {
      "Content-Type": "application/xml; charset=utf-8",
      "Content-Disposition": `attachment; filename="${result.value.fileName}"`,
      "Cache-Control": "private, no-store",
    },
  });
}
