import { expect, test } from "vitest";
import { sniffFile } from "./sniff-file";

const bytes = (...parts: (string | number[])[]) =>
  Buffer.concat([
    ...parts.map((part) => (typeof part === "string" ? Buffer.from(part, "latin1") : Buffer.from(part))),
    Buffer.alloc(64),
  ]);

/*
 * First bytes: JPEG, ITU-T T.81 B.1.1.3 (SOI, then a marker); PNG, W3C PNG 5.2 and IHDR 11.2.1; WebP, RFC 9649
 * 2.4; HEIC, ISO/IEC 23008-12 brand "heic" in an ISO 14496-12 file-type box; PDF, ISO 32000-2 7.5.2.
 */
test.each([
  ["image/jpeg", bytes([0xff, 0xd8, 0xff, 0xe0, 0, 16], "JFIF")],
  [
    "image/png",
    bytes(
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13],
      "IHDR",
      [0, 0, 0, 1, 0, 0, 0, 1, 8, 2, 0, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0],
      "IDAT",
    ),
  ],
  ["image/webp", bytes("RIFF", [100, 0, 0, 0], "WEBPVP8 ")],
  ["image/heic", bytes([0, 0, 0, 24], "ftypheic", [0, 0, 0, 0], "mif1heic")],
  ["application/pdf", bytes("%PDF-1.7\n")],
])("%s is known by its bytes", async (type, content) => {
  expect(await sniffFile(content)).toBe(type);
});

test.each([
  ["text that is called photo.jpg", Buffer.from("this is not a picture")],
  ["a web page", Buffer.from("<!doctype html><script>alert(1)</script>")],
  [
    "an SVG, which can carry scripts",
    Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>'),
  ],
  ["a program", bytes([0x7f], "ELF")],
  ["a zip", bytes("PK", [3, 4])],
  ["nothing", Buffer.alloc(0)],
  ["the first two bytes of a JPEG", Buffer.from([0xff, 0xd8])],
])("%s is not taken", async (_what, content) => {
  expect(await sniffFile(content)).toBeNull();
});
