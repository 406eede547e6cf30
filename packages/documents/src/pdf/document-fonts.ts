import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** TrueType bytes; embedded as subsets, so that a document looks the same on every machine and prints anywhere. */
export interface DocumentFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

const FOLDER = join("node_modules", "dejavu-fonts-ttf", "ttf");
const files = { regular: "DejaVuSansCondensed.ttf", bold: "DejaVuSansCondensed-Bold.ttf" } as const;

let found: DocumentFonts | null = null;

/**
 * The fonts beside the running program, read once. They are looked for upwards from the working folder, because
 * a bundled server no longer knows where its packages lie.
 *
 * @throws Error when the font package is not installed there.
 */
export function documentFonts(): DocumentFonts {
  found ??= readFonts(fontFolder(process.cwd()));
  return found;
}

function fontFolder(from: string): string {
  for (let folder = from; ; folder = dirname(folder)) {
    const candidate = join(folder, FOLDER);
    if (existsSync(join(candidate, files.regular))) return candidate;
    if (dirname(folder) === folder)
      throw new Error(`No fonts for documents: ${FOLDER} is not above ${from}.`);
  }
}

function readFonts(folder: string): DocumentFonts {
  return { regular: readFileSync(join(folder, files.regular)), bold: readFileSync(join(folder, files.bold)) };
}
