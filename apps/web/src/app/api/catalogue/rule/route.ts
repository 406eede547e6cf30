import { perform, readRuleBack } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** A rule that is being put together, as one sentence: or what it still lacks, in one sentence too. */
export async function GET(request: Request): Promise<Response> {
  const asked = new URL(request.url).searchParams.get("asked") ?? "";
  let input: unknown;
  try {
    input = JSON.parse(asked);
  } catch {
    return Response.json({ sentence: "The rule could not be read. Open the page again." }, { status: 400 });
  }
  const result = await perform(await requestContext(), readRuleBack, input);
  const sentence = result.ok ? result.value.sentence : result.refusal.sentence;
  return Response.json({ sentence }, { headers: { "Cache-Control": "no-store" } });
}
