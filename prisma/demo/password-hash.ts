import { scrypt } from "node:crypto";
import type { SeededRandom } from "./seeded-random";

const N = 32_768;
const r = 8;
const p = 3;
const KEY_BYTES = 64;

/**
 * A hash in the form the sign-in reads: scrypt$N$r$p$salt$hash, both in base64. The salt comes from the
 * seed, because the demo's password is printed anyway and its rows must come out the same.
 */
export function demoPasswordHash(password: string, random: SeededRandom): Promise<string> {
  const salt = Buffer.from(Array.from({ length: 16 }, () => random.integer(0, 255)));
  return new Promise((resolve, reject) => {
    scrypt(password, salt, KEY_BYTES, { N, r, p, maxmem: 256 * N * r }, (error, key) => {
      if (error) reject(error);
      else resolve(["scrypt", N, r, p, salt.toString("base64"), key.toString("base64")].join("$"));
    });
  });
}
