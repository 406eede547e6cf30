interface PolicyOptions {
  /** Fresh for every request; anything inline that lacks it does not run. */
  readonly nonce: string;
  /** True when the browser came by https, where plain requests can be upgraded. */
  readonly isSecure: boolean;
  /** The development server evaluates code and injects styles; the product never does. */
  readonly isDevelopment: boolean;
}

/**
 * The page's content security policy (W3C Content Security Policy Level 3) as one header value.
 *
 * Style *attributes* are allowed because popovers and plots are placed by them; style elements and
 * scripts need the nonce.
 */
export function contentSecurityPolicy({ nonce, isSecure, isDevelopment }: PolicyOptions): string {
  const directives: Record<string, string[]> = {
    "default-src": ["'self'"],
    "script-src": ["'self'", `'nonce-${nonce}'`, "'strict-dynamic'"],
    "style-src": ["'self'", `'nonce-${nonce}'`],
    "style-src-attr": ["'unsafe-inline'"],
    "img-src": ["'self'", "blob:", "data:"],
    "font-src": ["'self'"],
    "connect-src": ["'self'"],
    "worker-src": ["'self'"],
    "manifest-src": ["'self'"],
    "object-src": ["'none'"],
    "base-uri": ["'none'"],
    "form-action": ["'self'"],
    "frame-ancestors": ["'none'"],
  };
  if (isDevelopment) {
    directives["script-src"]?.push("'unsafe-eval'");
    directives["style-src"] = ["'self'", "'unsafe-inline'"];
    directives["connect-src"]?.push("ws:");
  }
  if (isSecure) directives["upgrade-insecure-requests"] = [];
  return Object.entries(directives)
    .map(([name, sources]) => [name, ...sources].join(" "))
    .join("; ");
}
