import { runCalculationText } from "@buildproof/contract";
import { perform, whoAmI } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

interface CalculationRoute {
  readonly params: Promise<{ readonly name: string }>;
}

/** The largest question there is sense in: a whole catalogue of rules and items. */
const largestQuestionBytes = 20_000_000;

/** The public calculations for signed-in people: the same functions, errors and fields as `npm run calc`. */
export async function POST(request: Request, { params }: CalculationRoute): Promise<Response> {
  const person = await perform(await requestContext(), whoAmI, {});
  if (!person.ok) return failure(401, person.refusal.code, person.refusal.sentence);
  if (Number(request.headers.get("content-length") ?? 0) > largestQuestionBytes) {
    return failure(413, "too-large", "The question is larger than 20 MB: ask about less at a time.");
  }
  const outcome = runCalculationText((await params).name, await request.text());
  if (outcome.ok) return Response.json(outcome.value);
  const status = outcome.error.code === "unknown-calculation" ? 404 : 422;
  return Response.json({ error: outcome.error }, { status });
}

function failure(status: number, code: string, message: string): Response {
  return Response.json({ error: { code, message, path: [] } }, { status });
}
