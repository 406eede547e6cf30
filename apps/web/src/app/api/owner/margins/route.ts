import { exportMargins, perform } from "@buildproof/workshop";
import type { NextRequest } from "next/server";
import { periodAt } from "@/features/owner/period-words";
import { refusedResponse } from "@/features/quotes/pdf-response";
import { requestContext } from "@/server/request-context";

/** The jobs behind the margins, for a spreadsheet. */
export async function GET(request: NextRequest): Promise<Response> {
  const asked = request.nextUrl.searchParams;
  const result = await perform(await requestContext(), exportMargins, {
    code: asked.get("code") ?? "all-work",
    period: periodAt(asked.get("period") ?? undefined),
  });
  if (!result.ok) return refusedResponse(result.refusal);
  return new Response(result.value.csv, {
    headers: {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": `attachment; filename="${result.value.name}"`,
      "Cache-Control": "private, no-store",
    },
  });
}
