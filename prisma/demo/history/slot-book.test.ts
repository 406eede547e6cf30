import fc from "fast-check";
import { expect, test } from "vitest";
import { slotBook } from "./slot-book";

const request = fc.record({
  earliest: fc.integer({ min: 0, max: 800 }),
  length: fc.integer({ min: 1, max: 120 }),
  groups: fc.subarray([["a", "b"], ["c"], ["a"]], { minLength: 1, maxLength: 2 }),
});

test("nobody is ever in two places, nothing starts early or ends late", () => {
  fc.assert(
    fc.property(fc.array(request, { maxLength: 40 }), (requests) => {
      const book = slotBook(1_000);
      const taken = new Map<string, { from: number; to: number }[]>();
      for (const { earliest, length, groups } of requests) {
        const found = book.take(earliest, length, groups);
        if (!found) continue;
        expect(found.slot.from).toBeGreaterThanOrEqual(earliest);
        expect(found.slot.to - found.slot.from).toBe(length);
        expect(found.slot.to).toBeLessThanOrEqual(1_000);
        for (const resource of new Set(found.resources)) {
          const before = taken.get(resource) ?? [];
          expect(before.some((slot) => slot.from < found.slot.to && slot.to > found.slot.from)).toBe(false);
          taken.set(resource, [...before, found.slot]);
        }
      }
    }),
  );
});
