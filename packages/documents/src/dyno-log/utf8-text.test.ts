import fc from "fast-check";
import { expect, test } from "vitest";
import { utf8Text } from "./utf8-text";

function inPieces(bytes: Uint8Array, piece: number): string | null {
  const decoder = utf8Text();
  let text = "";
  for (let at = 0; at < bytes.length; at += piece) {
    const next = decoder.push(bytes.subarray(at, at + piece));
    if (next === null) return null;
    text += next;
  }
  return decoder.end() ? text : null;
}

test("text cut anywhere comes out as a whole decoder reads it", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), fc.integer({ min: 1, max: 9 }), (text, piece) => {
      const bytes = new TextEncoder().encode(text);
      expect(inPieces(bytes, piece)).toBe(new TextDecoder().decode(bytes));
    }),
    { numRuns: 200 },
  );
});

test("bytes are text exactly where a strict decoder takes them", () => {
  const strict = (bytes: Uint8Array) => {
    try {
      return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    } catch {
      return null;
    }
  };
  const awkward = fc.constantFrom(
    0x41,
    0x7f,
    0x80,
    0xbf,
    0xc0,
    0xc3,
    0xa9,
    0xe2,
    0x82,
    0xac,
    0xed,
    0xf0,
    0x9f,
    0xff,
  );
  fc.assert(
    fc.property(fc.array(awkward, { maxLength: 12 }), fc.integer({ min: 1, max: 5 }), (values, piece) => {
      const bytes = Uint8Array.from(values);
      expect(inPieces(bytes, piece)).toBe(strict(bytes));
    }),
    { numRuns: 500 },
  );
});
