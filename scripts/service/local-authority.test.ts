import { createPrivateKey, X509Certificate } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { localCertificate } from "./local-authority";

const now = new Date("2026-11-25T00:00:00Z");
const names = ["localhost", "127.0.0.1", "192.168.1.4"];
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "buildproof-certificates-"));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

// Read back with Node's own X.509 reader, which is OpenSSL and shares nothing with what wrote them.
test("the certificate is signed by the authority, fits its key and covers every name", async () => {
  const made = await localCertificate(folder, names, now);
  const [certificate, authority] = [new X509Certificate(made.chain), new X509Certificate(made.authority)];
  expect(certificate.verify(authority.publicKey)).toBe(true);
  expect(certificate.checkIssued(authority)).toBe(true);
  expect(certificate.checkPrivateKey(createPrivateKey(made.key))).toBe(true);
  expect(certificate.checkHost("localhost")).toBe("localhost");
  expect(certificate.checkIP("192.168.1.4")).toBe("192.168.1.4");
  expect(certificate.checkIP("192.168.1.5")).toBeUndefined();
  expect([certificate.ca, authority.ca]).toEqual([false, true]);
  expect(made.fingerprint).toBe(authority.fingerprint256);
});

test("a second start keeps both, so that a tablet need not be told again", async () => {
  const first = await localCertificate(folder, names, now);
  expect(await localCertificate(folder, names, now)).toEqual(first);
});

test("another address, or one month before it lapses, brings a new certificate from the same authority", async () => {
  const first = await localCertificate(folder, names, now);
  const moved = await localCertificate(folder, [...names, "10.0.0.9"], now);
  expect(moved.authority).toBe(first.authority);
  expect(new X509Certificate(moved.chain).checkIP("10.0.0.9")).toBe("10.0.0.9");
  const later = await localCertificate(folder, names, new Date("2027-12-01T00:00:00Z"));
  expect(later.authority).toBe(first.authority);
  expect(later.chain).not.toBe(moved.chain);
  expect(new Date(new X509Certificate(later.chain).validTo).getFullYear()).toBe(2029);
});
