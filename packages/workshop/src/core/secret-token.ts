import { createHash, randomBytes } from "node:crypto";

/** A secret that opens one thing, a quote to its customer or the calculations to a program: 32 bytes from the system's random source, as 43 characters of base64url (RFC 4648 §5). */
export function newSecretToken(): { readonly token: string; readonly tokenHash: string } {
  const token = randomBytes(32).toString("base64url");
  return { token, tokenHash: hashOfToken(token) };
}

/** All that is kept of a token: its SHA-256 (FIPS 180-4) in lower-case hex. */
export function hashOfToken(token: string): string {
  return createHash("sha256").update(token).digest("hex");
}

/** Whether this could be a token at all; what is not never reaches the database. */
export function looksLikeToken(text: string): boolean {
  return /^[A-Za-z0-9_-]{43}$/.test(text);
}
