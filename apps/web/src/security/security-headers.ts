const ONE_YEAR_IN_SECONDS = 31_536_000;

/** Headers every answer carries, beside its content security policy. */
export function securityHeaders(isSecure: boolean): Readonly<Record<string, string>> {
  return {
    // Customers come by signed links; the address itself is the secret and must not travel on.
    "Referrer-Policy": "same-origin",
    "Permissions-Policy": "camera=(self), microphone=(), geolocation=(), payment=(), usb=()",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    // Over plain http a browser ignores it, and a workshop reached by both would be locked out of one.
    ...(isSecure ? { "Strict-Transport-Security": `max-age=${ONE_YEAR_IN_SECONDS}` } : {}),
  };
}
