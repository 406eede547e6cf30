import { letterPdf, perform } from "@buildproof/workshop";
import { letterContext } from "@/features/quotes/letter-context";
import { pdfResponse, refusedResponse } from "@/features/quotes/pdf-response";
import { en } from "@/messages/en";

/** The version that the link opens, as a PDF. */
export async function GET(
  _: Request,
  { params }: { readonly params: Promise<{ readonly token: string }> },
): Promise<Response> {
  const { token } = await params;
  const context = await letterContext(token);
  if (!context) return new Response(`${en.closed.title}. ${en.closed.next}\n`, { status: 404 });
  const result = await perform(context, letterPdf, {});
  return result.ok ? pdfResponse(result.value) : refusedResponse(result.refusal);
}
