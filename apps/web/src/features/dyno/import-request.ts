import type { ImportedSession, Result } from "@buildproof/workshop";
import { readNumber } from "@/design/read-number";
import { securityHeaders } from "@/security/security-headers";

/** The figures among the set-up, as they are named in the form, the address and the use case. */
const FIGURES = new Set([
  "barometerKPa",
  "airTempC",
  "relativeHumidityPct",
  "gearboxOilTempC",
  "rampRpmPerS",
  "fuelMgPerLPerCycle",
  "boostRatio",
]);

export type ImportRequest = {
  readonly setUp: Readonly<Record<string, unknown>>;
  readonly name: string;
  /** Kept over retries, so that a log sent twice is imported once. */
  readonly key: string | null;
};

/** The set-up in the address of an import. What is no number stays as typed, for the use case to refuse. */
export function readSetUp(query: URLSearchParams): ImportRequest {
  const setUp: Record<string, unknown> = {};
  for (const [field, typed] of query) {
    if (field === "name" || field === "requestKey" || typed === "") continue;
    setUp[field] = FIGURES.has(field) ? figureOf(typed) : typed;
  }
  return { setUp, name: query.get("name") ?? "", key: query.get("requestKey") };
}

function figureOf(typed: string): number | string {
  const read = readNumber(typed);
  return read.ok ? read.value : typed;
}

export function importAnswer(request: Request, result: Result<ImportedSession>): Response {
  if (!result.ok)
    return refusalAnswer(request, result.refusal.code, result.refusal.sentence, result.refusal.field);
  return answer(request, 200, { session: result.value });
}

/** Answers before the body has been read to its end, so the connection is not used again. */
export function refusalAnswer(request: Request, code: string, sentence: string, field?: string): Response {
  const refusal = { code, sentence, ...(field === undefined ? {} : { field }) };
  return answer(request, statusOf(code), { refusal }, { Connection: "close" });
}

function answer(
  request: Request,
  status: number,
  body: object,
  headers: Record<string, string> = {},
): Response {
  const isSecure =
    new URL(request.url).protocol === "https:" || request.headers.get("x-forwarded-proto") === "https";
  return Response.json(body, {
    status,
    headers: { "Cache-Control": "no-store", ...securityHeaders(isSecure), ...headers },
  });
}

function statusOf(code: string): number {
  if (code === "not-signed-in" || code === "session-over") return 401;
  if (code === "not-allowed" || code === "skill-missing") return 403;
  if (code.endsWith("-not-found")) return 404;
  if (code === "already-imported") return 409;
  return code === "log-too-large" ? 413 : 422;
}
