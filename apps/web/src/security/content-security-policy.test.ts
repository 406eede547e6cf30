import { describe, expect, test } from "vitest";
import { contentSecurityPolicy } from "./content-security-policy";
import { securityHeaders } from "./security-headers";

const served = { nonce: "abc123", isSecure: false, isDevelopment: false };

function directive(policy: string, name: string): string[] {
  const found = policy.split("; ").find((entry) => entry.split(" ")[0] === name);
  return found?.split(" ").slice(1) ?? [];
}

describe("the content security policy", () => {
  test("lets no script run that does not carry the nonce", () => {
    const scripts = directive(contentSecurityPolicy(served), "script-src");
    expect(scripts).toContain("'nonce-abc123'");
    expect(scripts).not.toContain("'unsafe-inline'");
    expect(scripts).not.toContain("'unsafe-eval'");
  });

  test("lets style attributes through, but no style element without the nonce", () => {
    const policy = contentSecurityPolicy(served);
    expect(directive(policy, "style-src")).not.toContain("'unsafe-inline'");
    expect(directive(policy, "style-src-attr")).toEqual(["'unsafe-inline'"]);
  });

  test("lets nobody frame a page", () => {
    expect(directive(contentSecurityPolicy(served), "frame-ancestors")).toEqual(["'none'"]);
  });

  test("upgrades plain requests only where the page itself came by https", () => {
    expect(contentSecurityPolicy(served)).not.toContain("upgrade-insecure-requests");
    expect(contentSecurityPolicy({ ...served, isSecure: true })).toContain("upgrade-insecure-requests");
  });
});

test("strict transport is promised only over https", () => {
  expect(securityHeaders(false)).not.toHaveProperty("Strict-Transport-Security");
  expect(securityHeaders(true)).toHaveProperty("Strict-Transport-Security");
});
