import { content, ink, LINE_GAP, margin, size } from "./sheet-style";

export type Face = "regular" | "bold";
type Structure = ReturnType<PDFKit.PDFDocument["struct"]>;

export interface TextStyle {
  readonly face?: Face;
  readonly size?: number;
  readonly colour?: string;
  readonly align?: "left" | "right";
}

export interface ListMark {
  readonly mark?: string;
  readonly colour?: string;
}

const LIST_INDENT = 11;

export interface TextBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/**
 * Writes down a page and on to the next, keeping the structure tree that reading aids follow. Ruled lines and
 * page furniture are artifacts: drawn, not read out.
 */
export class SheetWriter {
  y: number = margin.top;
  readonly #doc: PDFKit.PDFDocument;
  readonly #root: Structure;

  constructor(doc: PDFKit.PDFDocument, root: Structure) {
    this.#doc = doc;
    this.#root = root;
  }

  get doc(): PDFKit.PDFDocument {
    return this.#doc;
  }

  /** Goes to the next page unless so much still fits on this one. */
  keep(height: number): void {
    if (this.y + height <= content.bottom) return;
    this.#doc.addPage();
    this.y = margin.top;
  }

  space(height: number): void {
    this.y += height;
  }

  element(type: string, parent: Structure = this.#root, options: { alt?: string } = {}): Structure {
    const element = this.#doc.struct(type, options);
    parent.add(element);
    return element;
  }

  /** Marked content under its own element of the structure tree. */
  marked(
    type: string,
    draw: () => void,
    parent: Structure = this.#root,
    options: { alt?: string } = {},
  ): void {
    parent.add(this.#doc.struct(type, options, draw));
  }

  artifact(draw: () => void): void {
    this.#doc.markContent("Artifact", { type: "Layout" });
    draw();
    this.#doc.endMarkedContent();
  }

  rule(colour: string = ink.rule, thickness = 0.5): void {
    this.artifact(() => {
      this.#doc
        .moveTo(content.left, this.y)
        .lineTo(content.right, this.y)
        .lineWidth(thickness)
        .strokeColor(colour)
        .stroke();
    });
  }

  heightOf(text: string, width: number, style: TextStyle = {}): number {
    this.#apply(style);
    return this.#doc.heightOfString(text, { width, lineGap: LINE_GAP });
  }

  /** Puts text in a box and leaves `y` where it was. */
  put(text: string, box: TextBox, style: TextStyle = {}): void {
    this.#apply(style);
    this.#doc.text(text, box.x, box.y, { width: box.width, lineGap: LINE_GAP, align: style.align ?? "left" });
  }

  /** `follows` is the height that must stand under it on the same page: a heading is never alone at the foot. */
  heading(
    text: string,
    level: 1 | 2,
    { follows = 44, colour }: { follows?: number; colour?: string } = {},
  ): void {
    const style: TextStyle = {
      face: "bold",
      size: level === 1 ? size.title : size.heading,
      colour: colour ?? (level === 1 ? ink.black : ink.accent),
    };
    const height = this.heightOf(text, content.width, style);
    if (level === 2) this.space(9);
    this.keep(height + 3 + follows);
    this.marked(`H${level}`, () => this.put(text, this.#line(), style));
    this.space(height + 3);
  }

  paragraph(text: string, style: TextStyle = {}, after = 4): void {
    for (const part of text.split(/\n\s*\n/)) {
      const height = this.heightOf(part, content.width, style);
      this.keep(Math.min(height, 40));
      this.marked("P", () => this.put(part, this.#line(), style));
      this.y = this.#doc.y + after;
    }
  }

  list(items: readonly string[], { mark = "–", colour = ink.black }: ListMark = {}): void {
    const list = this.element("L");
    for (const item of items) {
      const width = content.width - LIST_INDENT;
      this.keep(Math.min(this.heightOf(item, width), 40));
      const entry = this.element("LI", list);
      const top = this.y;
      const markStyle: TextStyle = { face: "bold", colour };
      this.marked(
        "Lbl",
        () => this.put(mark, { x: content.left, y: top, width: LIST_INDENT }, markStyle),
        entry,
      );
      this.marked("LBody", () => this.put(item, { x: content.left + LIST_INDENT, y: top, width }), entry);
      this.y = this.#doc.y + 1.5;
    }
    list.end();
    this.space(2.5);
  }

  heightOfList(items: readonly string[]): number {
    return items.reduce((sum, item) => sum + this.heightOf(item, content.width - LIST_INDENT) + 1.5, 0);
  }

  #line(): TextBox {
    return { x: content.left, y: this.y, width: content.width };
  }

  #apply({ face = "regular", size: points = size.body, colour = ink.black }: TextStyle): void {
    this.#doc.font(face).fontSize(points).fillColor(colour);
  }
}
