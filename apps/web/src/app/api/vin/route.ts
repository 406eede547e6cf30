import { lookUpVin, perform } from "@buildproof/workshop";
import { requestContext } from "@/server/request-context";

/** What a VIN says about itself while it is typed, and whether the vehicle is here already. */
export async function GET(request: Request): Promise<Response> {
  const vin = new URL(request.url).searchParams.get("vin") ?? "";
  const result = await perform(await requestContext(), lookUpVin, { vin });
  if (result.ok) return Response.json(result.value);
  const { code, sentence } = result.refusal;
  const status = code === "not-signed-in" || code === "session-over" ? 401 : 400;
  return Response.json({ error: { code, sentence } }, { status });
}
