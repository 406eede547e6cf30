import { proveCatalogueVersion } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** What the catalogue allows, or the draft in `?version=` would. The proof ends when the browser no longer waits. */
export async function GET(request: Request): Promise<Response> {
  const versionId = new URL(request.url).searchParams.get("version");
  const proven = await proveCatalogueVersion(await requestContext(), { versionId }, request.signal);
  if (proven.ok) return Response.json(proven.value);
  const { code, sentence } = proven.refusal;
  const status = code === "not-signed-in" || code === "session-over" ? 401 : 400;
  return Response.json({ error: { code, sentence } }, { status });
}
