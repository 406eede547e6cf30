import "reflect-metadata";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { isIP } from "node:net";
import path from "node:path";
import * as x509 from "@peculiar/x509";

/** A certificate for this machine's names, and the authority a tablet has to trust for it. */
export type LocalCertificate = {
  readonly key: string;
  /** Certificate of the service, followed by the authority's. */
  readonly chain: string;
  readonly authority: string;
  /** SHA-256 of the authority's certificate, in pairs, to compare on the tablet. */
  readonly fingerprint: string;
};

const algorithm = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" };
const DAY_MS = 86_400_000;
/** Longer ones are refused by some tablets, whoever signed them. */
const CERTIFICATE_DAYS = 397;
const AUTHORITY_DAYS = 3650;

/** Makes the authority once, and a certificate whenever the names change or it is about to lapse. */
export async function localCertificate(
  folder: string,
  names: readonly string[],
  now: Date,
): Promise<LocalCertificate> {
  const place = path.join(folder, "certificates");
  mkdirSync(place, { recursive: true, mode: 0o700 });
  const authority = (await kept(place, "authority")) ?? (await makeAuthority(place, now));
  const service = await kept(place, "service");
  const fits = service && coversAll(service.certificate, names) && lastsFor(service.certificate, 30, now);
  const { certificate, key } = fits ? service : await makeCertificate(place, authority, names, now);
  const pem = authority.certificate.toString("pem");
  const digest = createHash("sha256").update(Buffer.from(authority.certificate.rawData)).digest("hex");
  return {
    key,
    chain: `${certificate.toString("pem")}\n${pem}\n`,
    authority: pem,
    fingerprint: (digest.toUpperCase().match(/../g) ?? []).join(":"),
  };
}

type Pair = { readonly certificate: x509.X509Certificate; readonly key: string };

async function kept(place: string, name: string): Promise<Pair | null> {
  const [certificate, key] = [path.join(place, `${name}.crt`), path.join(place, `${name}.key`)];
  if (!existsSync(certificate) || !existsSync(key)) return null;
  return {
    certificate: new x509.X509Certificate(readFileSync(certificate, "utf8")),
    key: readFileSync(key, "utf8"),
  };
}

async function makeAuthority(place: string, now: Date): Promise<Pair> {
  const keys = await crypto.subtle.generateKey(algorithm, true, ["sign", "verify"]);
  const certificate = await x509.X509CertificateGenerator.createSelfSigned({
    name: `CN=Buildproof of this workshop, O=Made on this machine ${now.toISOString().slice(0, 10)}`,
    serialNumber: serial(),
    notBefore: new Date(now.getTime() - DAY_MS),
    notAfter: new Date(now.getTime() + AUTHORITY_DAYS * DAY_MS),
    signingAlgorithm: algorithm,
    keys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return keep(place, "authority", certificate, keys.privateKey);
}

async function makeCertificate(
  place: string,
  authority: Pair,
  names: readonly string[],
  now: Date,
): Promise<Pair> {
  const keys = await crypto.subtle.generateKey(algorithm, true, ["sign", "verify"]);
  const signingKey = await crypto.subtle.importKey(
    "pkcs8",
    x509.PemConverter.decodeFirst(authority.key),
    algorithm,
    false,
    ["sign"],
  );
  const certificate = await x509.X509CertificateGenerator.create({
    subject: "CN=Buildproof",
    issuer: authority.certificate.subject,
    serialNumber: serial(),
    notBefore: new Date(now.getTime() - DAY_MS),
    notAfter: new Date(now.getTime() + CERTIFICATE_DAYS * DAY_MS),
    signingAlgorithm: algorithm,
    publicKey: keys.publicKey,
    signingKey,
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension(
        names.map((value): x509.JsonGeneralName => ({ type: isIP(value) ? "ip" : "dns", value })),
      ),
      await x509.AuthorityKeyIdentifierExtension.create(authority.certificate),
    ],
  });
  return keep(place, "service", certificate, keys.privateKey);
}

async function keep(
  place: string,
  name: string,
  certificate: x509.X509Certificate,
  key: CryptoKey,
): Promise<Pair> {
  const pem = x509.PemConverter.encode(await crypto.subtle.exportKey("pkcs8", key), "PRIVATE KEY");
  writeFileSync(path.join(place, `${name}.key`), pem, { mode: 0o600 });
  writeFileSync(path.join(place, `${name}.crt`), certificate.toString("pem"));
  return { certificate, key: pem };
}

function coversAll(certificate: x509.X509Certificate, names: readonly string[]): boolean {
  const covered = certificate.getExtension(x509.SubjectAlternativeNameExtension)?.names.items ?? [];
  return names.every((name) => covered.some((entry) => entry.value === name));
}

function lastsFor(certificate: x509.X509Certificate, days: number, now: Date): boolean {
  return certificate.notAfter.getTime() - now.getTime() > days * DAY_MS;
}

/** Positive and unguessable: RFC 5280, 4.1.2.2. */
function serial(): string {
  return `01${Buffer.from(crypto.getRandomValues(new Uint8Array(15))).toString("hex")}`;
}
