import { type ImportedSession, LARGEST_LOG_BYTES, type Result } from "@buildproof/workshop";
import { readNumber } from "@/design/read-number";
import { securityHeaders } from "@/security/security-headers";
import { passOver } from "@/server/pass-over";

/** The figures among the set-up, as they are named in the form, the address and the use case. */
const FIGURES = new Set([
  "barometerKPa",
  "airTempC",
  "relativeHumidityPct",
  "gearRatio",
  "finalDrive",
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
  return result.ok
    ? new Response(JSON.stringify({ session: result.value }), { status: 200, headers: headersOf(request) })
    : refusalAnswer(request, result.refusal);
}

type Refused = { readonly code: string; readonly sentence: string; readonly field?: string | undefined };

/** As much as a good log would have had, and no longer than somebody sends. */
const LEFT_OVER = { mostBytes: LARGEST_LOG_BYTES, silenceMs: 5_000 } as const;

/** Answers before the body has been read to its end, passes over the rest of it, and only then lets go. */
export function refusalAnswer(request: Request, { code, sentence, field }: Refused): Response {
  const refusal = { code, sentence, ...(field === undefined ? {} : { field }) };
  const body = new ReadableStream<Uint8Array>({
    async start(controller) {
      controller.enqueue(new TextEncoder().encode(JSON.stringify({ refusal })));
      if (request.body) await passOver(request.body, LEFT_OVER);
      controller.close();
    },
  });
  const headers = { ...headersOf(request), Connection: "close" };
  return new Response(body, { status: statusOf(code), headers });
}

function headersOf(request: Request): Record<string, string> {
  const isSecure =
    new URL(request.url).protocol === "https:" || request.headers.get("x-forwarded-proto") === "https";
  return {
    "Content-Type": "application/json",
    "Cache-Control": "no-store",
    ...securityHeaders(isSecure),
  };
}

function statusOf(code: string): number {
  if (code === "not-signed-in" || code === "session-over") return 401;
  if (code === "not-allowed" || code === "skill-missing") return 403;
  if (code.endsWith("-not-found")) return 404;
  if (code === "already-imported") return 409;
  return code === "log-too-large" ? 413 : 422;
}
