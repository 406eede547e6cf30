import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface ReadPdf {
  readonly pages: readonly string[];
  readonly tagged: boolean;
  readonly language: string | null;
  /** Structure types in reading order over all pages. */
  readonly structure: readonly string[];
  readonly alternatives: readonly string[];
}

interface StructureNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly StructureNode[];
}

/** Reads a PDF back with an independent reader, for the tests. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  // The reader takes the buffer over, and the test may still need it.
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const pdf = await task.promise;
  const pages: string[] = [];
  const nodes: StructureNode[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(items.map((each) => ("str" in each ? each.str + (each.hasEOL ? "\n" : "") : "")).join(""));
    nodes.push(...flat((await page.getStructTree()) as StructureNode | null));
  }
  const markInfo = (await pdf.getMarkInfo()) as { Marked?: boolean } | null;
  const { info } = (await pdf.getMetadata()) as { info: { Language?: string } };
  await task.destroy();
  return {
    pages,
    tagged: markInfo?.Marked === true,
    language: info.Language ?? null,
    structure: nodes.flatMap(({ role }) => (role === undefined ? [] : [role])),
    alternatives: nodes.flatMap(({ alt }) => (alt === undefined ? [] : [alt])),
  };
}

function flat(node: StructureNode | null): StructureNode[] {
  return node === null ? [] : [node, ...(node.children ?? []).flatMap(flat)];
}
