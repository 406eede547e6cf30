import { isUtf8 } from "node:buffer";

export type TextEncodingName = "UTF-8" | "UTF-16" | "Windows-1252";

export type DecodedText = { readonly text: string; readonly encoding: TextEncodingName };

/**
 * The text of a file that a spreadsheet or a person saved, or null where it is none: a workbook, a picture. A byte
 * order mark decides; without one it is UTF-8 where the bytes allow it, else the code page of Western Windows.
 *
 * @source The Unicode Standard, clause 23.8 (byte order mark); WHATWG Encoding Standard for the decoders.
 */
export function decodedText(bytes: Uint8Array): DecodedText | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return decoded("utf-16le", bytes, "UTF-16");
  if (first === 0xfe && second === 0xff) return decoded("utf-16be", bytes, "UTF-16");
  // No text has a NUL, and every workbook has one within its first bytes.
  if (bytes.includes(0)) return null;
  if (isUtf8(bytes)) return decoded("utf-8", bytes, "UTF-8");
  return decoded("windows-1252", bytes, "Windows-1252");
}

function decoded(label: string, bytes: Uint8Array, encoding: TextEncodingName): DecodedText {
  return { text: new TextDecoder(label).decode(bytes), encoding };
}
