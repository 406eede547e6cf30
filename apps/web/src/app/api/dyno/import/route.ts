import { importDynoLog, LARGEST_LOG_BYTES } from "@buildproof/workshop";
import { importAnswer, readSetUp, refusalAnswer } from "@/features/dyno/import-request";
import { requestContext } from "@/server/request-context";

/**
 * Takes a dyno log as it streams in, its set-up in the address. It stands outside the proxy, which would hold
 * the body in memory and cut it off, so it numbers the request and guards the door itself.
 */
export async function POST(request: Request): Promise<Response> {
  const site = request.headers.get("sec-fetch-site");
  if (site !== null && site !== "same-origin")
    return refusalAnswer(request, {
      code: "not-allowed",
      sentence: "Import the log from the dyno page of the workshop.",
    });
  if (Number(request.headers.get("content-length") ?? 0) > LARGEST_LOG_BYTES)
    return refusalAnswer(request, {
      code: "log-too-large",
      sentence: `The file is larger than ${LARGEST_LOG_BYTES / 1e6} MB: export fewer runs at a time and import each file.`,
    });
  const { setUp, name, key } = readSetUp(new URL(request.url).searchParams);
  const context = { ...(await requestContext()), requestId: crypto.randomUUID() };
  const body = request.body ?? new Blob([]).stream();
  // Whoever stops reading does not cancel it: that would close the connection before the answer is read.
  const stream = { [Symbol.asyncIterator]: () => body.values({ preventCancel: true }) };
  return importAnswer(request, await importDynoLog(context, setUp, { name, stream }, key ? { key } : {}));
}
