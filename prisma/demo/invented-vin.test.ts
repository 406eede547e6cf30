import { vin } from "@buildproof/compliance";
import fc from "fast-check";
import { expect, test } from "vitest";
import { inventedVin } from "./invented-vin";
import { seededRandom } from "./seeded-random";

// The check digit is that of 49 CFR 565.15(c); `vin` is held to its published examples elsewhere.
test("every invented number is well formed and carries the right check digit", () => {
  fc.assert(
    fc.property(fc.string(), (seed) => {
      const read = vin(inventedVin(seededRandom(seed)));
      expect(read.problems).toEqual([]);
      expect(read.wellFormed).toBe(true);
      expect(read.checkDigit?.matches).toBe(true);
    }),
  );
});
