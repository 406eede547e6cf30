import { findEverything, perform } from "@buildproof/workshop";
import { searchResultsOf } from "@/features/find/search-results-of";
import { requestContext } from "@/server/request-context";

/** What the search field shows: matches by group, or what is newest when nothing is typed. */
export async function GET(request: Request): Promise<Response> {
  const q = new URL(request.url).searchParams.get("q") ?? "";
  const result = await perform(await requestContext(), findEverything, { q });
  if (result.ok) return Response.json(searchResultsOf(result.value));
  const { code, sentence } = result.refusal;
  const status = code === "not-signed-in" || code === "session-over" ? 401 : 400;
  return Response.json({ error: { code, sentence } }, { status });
}
