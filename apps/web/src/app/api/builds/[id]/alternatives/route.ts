import { findAlternatives } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

interface AlternativesRoute {
  readonly params: Promise<{ readonly id: string }>;
}

/** The best ways to complete a build. The search ends when the browser no longer waits for it. */
export async function GET(request: Request, { params }: AlternativesRoute): Promise<Response> {
  const { id: buildId } = await params;
  const found = await findAlternatives(await requestContext(), { buildId }, request.signal);
  if (found.ok) return Response.json(found.value);
  const { code, sentence } = found.refusal;
  const status = code === "not-signed-in" || code === "session-over" ? 401 : 400;
  return Response.json({ error: { code, sentence } }, { status });
}
