import { headers } from "next/headers";

/** Where the outside reaches this service: `PUBLIC_URL`, else the address that this request came to. */
export async function publicAddress(): Promise<string> {
  const configured = process.env.PUBLIC_URL;
  if (configured) return configured.replace(/\/+$/, "");
  const sent = await headers();
  const host = sent.get("x-forwarded-host") ?? sent.get("host") ?? "localhost";
  const protocol = sent.get("x-forwarded-proto")?.split(",")[0]?.trim() ?? "http";
  return `${protocol}://${host}`;
}
