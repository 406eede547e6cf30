import { type NextRequest, NextResponse } from "next/server";
import { contentSecurityPolicy } from "./security/content-security-policy";
import { securityHeaders } from "./security/security-headers";

/** Gives every request its number and its nonce, and every answer its security headers. */
export function proxy(request: NextRequest): NextResponse {
  const isSecure =
    request.nextUrl.protocol === "https:" || request.headers.get("x-forwarded-proto") === "https";
  const nonce = crypto.randomUUID().replaceAll("-", "");
  const requestId = crypto.randomUUID();
  const policy = contentSecurityPolicy({
    nonce,
    isSecure,
    isDevelopment: process.env.NODE_ENV === "development",
  });

  const forwarded = new Headers(request.headers);
  forwarded.set("x-nonce", nonce);
  // Ours, never the caller's: the audit trail quotes it.
  forwarded.set("x-request-id", requestId);
  // Next reads the policy from the request to put the nonce on its own scripts.
  forwarded.set("Content-Security-Policy", policy);
  forwarded.set("x-path", `${request.nextUrl.pathname}${request.nextUrl.search}`);

  const response = NextResponse.next({ request: { headers: forwarded } });
  response.headers.set("Content-Security-Policy", policy);
  response.headers.set("x-request-id", requestId);
  for (const [name, value] of Object.entries(securityHeaders(isSecure))) response.headers.set(name, value);
  return response;
}

// A dyno log does not pass: a proxied body is held in memory and cut off at 10 MB. Its route sets the headers.
export const config = {
  matcher: [{ source: "/((?!_next/static|_next/image|favicon.ico|icon.svg|api/dyno/import$).*)" }],
};
