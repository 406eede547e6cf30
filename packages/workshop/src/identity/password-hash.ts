import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from "node:crypto";

/** scrypt, RFC 7914. N 2^15, r 8, p 3 costs about a third of a second on a workshop's machine. */
const cost = { N: 2 ** 15, r: 8, p: 3 };
const keyBytes = 64;

/** `scrypt$N$r$p$salt$hash`, salt and hash in base64. */
export async function hashPassword(password: string): Promise<string> {
  const salt = randomBytes(16);
  const key = await derive(password, salt, cost);
  return ["scrypt", cost.N, cost.r, cost.p, salt.toString("base64"), key.toString("base64")].join("$");
}

/** Compares in constant time. A null hash (nobody by that name) costs the same and is always false. */
export async function passwordMatches(password: string, stored: string | null): Promise<boolean> {
  const [scheme, N, r, p, salt, hash] = (stored ?? "").split("$");
  if (scheme !== "scrypt" || !salt || !hash) {
    await derive(password, randomBytes(16), cost);
    return false;
  }
  const expected = Buffer.from(hash, "base64");
  const found = await derive(password, Buffer.from(salt, "base64"), {
    N: Number(N),
    r: Number(r),
    p: Number(p),
  });
  return expected.length === found.length && timingSafeEqual(expected, found);
}

function derive(
  password: string,
  salt: Buffer,
  options: { N: number; r: number; p: number },
): Promise<Buffer> {
  const settings: ScryptOptions = { ...options, maxmem: 2 * 128 * options.N * options.r };
  return new Promise((resolve, reject) => {
    scrypt(password.normalize("NFC"), salt, keyBytes, settings, (error, key) =>
      error ? reject(error) : resolve(key),
    );
  });
}
