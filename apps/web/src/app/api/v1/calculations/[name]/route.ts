import { readWithin, runCalculationText, WITHIN_SENTENCE } from "@buildproof/contract";
import { admitCaller, type Refusal } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

interface CalculationRoute {
  readonly params: Promise<{ readonly name: string }>;
}

/** The largest question there is sense in: a whole catalogue of rules and items. */
const largestQuestionBytes = 20_000_000;

/**
 * The public calculations for signed-in people and for programs with a workshop's token: the same functions,
 * errors and fields as `npm run calc`.
 */
export async function POST(request: Request, { params }: CalculationRoute): Promise<Response> {
  const admitted = await admitCaller(await requestContext(), request.headers.get("authorization"));
  if (!admitted.ok) return notAdmitted(admitted.refusal);
  if (Number(request.headers.get("content-length") ?? 0) > largestQuestionBytes) {
    return failure(413, "too-large", "The question is larger than 20 MB: ask about less at a time.");
  }
  const within = new URL(request.url).searchParams.get("within");
  const withinMs = within === null ? undefined : readWithin(within);
  if (withinMs === null) return failure(422, "invalid-field", WITHIN_SENTENCE, {}, "within");
  const limits = { withinMs, cancelled: request.signal };
  const outcome = await runCalculationText((await params).name, await request.text(), limits);
  if (outcome.ok) return Response.json(outcome.value);
  const status = outcome.error.code === "unknown-calculation" ? 404 : 422;
  return Response.json({ error: outcome.error }, { status });
}

function notAdmitted({ code, sentence, data }: Refusal): Response {
  if (code !== "too-many-calls") return failure(401, code, sentence, { "WWW-Authenticate": "Bearer" });
  const wait = data as { retryAfterS: number }; // The refusal's own data, as its table declares it.
  return failure(429, code, sentence, { "Retry-After": String(wait.retryAfterS) });
}

function failure(
  status: number,
  code: string,
  message: string,
  headers: Record<string, string> = {},
  path = "",
): Response {
  return Response.json({ error: { code, message, path } }, { status, headers });
}
