import PDFDocument from "pdfkit";
import { type DocumentFonts, documentFonts } from "./document-fonts";
import { content, ink, MM, margin, page, size } from "./sheet-style";
import { SheetWriter } from "./sheet-writer";

export interface SheetProperties {
  readonly title: string;
  readonly author: string;
  /** Stands at the foot of every page before "page x of y". */
  readonly running: string;
  /** The file is dated with this instant and not with the clock: the same document is the same bytes. */
  readonly madeAt: string;
}

/** A tagged PDF 1.7 with embedded fonts, from what `write` puts on its pages. */
export async function renderSheet(
  properties: SheetProperties,
  write: (sheet: SheetWriter) => void,
  fonts: DocumentFonts = documentFonts(),
): Promise<Uint8Array> {
  const doc = openDocument(properties, fonts);
  const bytes = collected(doc);
  const root = doc.struct("Document");
  doc.addStructure(root);
  write(new SheetWriter(doc, root));
  root.end();
  furnish(doc, properties.running);
  doc.end();
  return bytes;
}

function openDocument({ title, author, madeAt }: SheetProperties, fonts: DocumentFonts): PDFKit.PDFDocument {
  const made = new Date(madeAt);
  if (Number.isNaN(made.getTime()))
    throw new RangeError(`A document is dated with an instant, not "${madeAt}".`);
  const doc = new PDFDocument({
    size: [page.width, page.height],
    margins: margin,
    bufferPages: true,
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: "en-AU",
    info: { Title: title, Author: author, Creator: "Buildproof", CreationDate: made, ModDate: made },
  });
  doc.registerFont("regular", Buffer.from(fonts.regular));
  doc.registerFont("bold", Buffer.from(fonts.bold));
  return doc;
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
    doc.on("error", reject);
  });
}

/** Running line and page numbers, when the number of pages is known. */
function furnish(doc: PDFKit.PDFDocument, running: string): void {
  const { count } = doc.bufferedPageRange();
  for (let index = 0; index < count; index += 1) {
    doc.switchToPage(index);
    // Text below the bottom margin would otherwise open a new page.
    doc.page.margins.bottom = 0;
    doc.markContent("Artifact", { type: "Pagination" });
    const y = page.height - 14 * MM;
    doc
      .moveTo(content.left, y - 5)
      .lineTo(content.right, y - 5)
      .lineWidth(0.5)
      .strokeColor(ink.rule)
      .stroke();
    doc.font("regular").fontSize(size.small).fillColor(ink.faint);
    doc.text(running, content.left, y, { width: content.width * 0.75, lineBreak: false });
    doc.text(`page ${index + 1} of ${count}`, content.left, y, { width: content.width, align: "right" });
    doc.endMarkedContent();
    doc.page.margins.bottom = margin.bottom;
  }
}
