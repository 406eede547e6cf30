import { content, ink, size } from "./sheet-style";
import type { SheetWriter, TextStyle } from "./sheet-writer";

export interface Column {
  readonly heading: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: "left" | "right";
}

export interface Cell {
  readonly text: string;
  /** Smaller print under it. */
  readonly detail?: string;
}

export interface Row {
  readonly cells: readonly (string | Cell)[];
  readonly strong?: boolean;
  /** A line across that names the rows after it. */
  readonly group?: boolean;
}

const PADDING = 3;
const GUTTER = 10;

const textStyle = (strong: boolean, align: "left" | "right"): TextStyle => ({
  face: strong ? "bold" : "regular",
  align,
});
const detailStyle: TextStyle = { size: size.small, colour: ink.faint };

/** A table ruled under each row; its head is repeated on every page and its rows are never cut in two. */
export function ruledTable(sheet: SheetWriter, columns: readonly Column[], rows: readonly Row[]): void {
  const boxes = boxesOf(columns);
  const table = sheet.element("Table");
  const head = () => drawHead(sheet, columns, boxes, table);
  const firstRow = rows[0];
  sheet.keep(18 + (firstRow === undefined ? 0 : rowHeight(sheet, firstRow, boxes) + 20));
  head();
  for (const [index, row] of rows.entries()) {
    const height = rowHeight(sheet, row, boxes);
    const next = rows[index + 1];
    const together =
      row.group === true && next !== undefined ? height + rowHeight(sheet, next, boxes) : height;
    const before = sheet.doc.bufferedPageRange().count;
    sheet.keep(together);
    if (sheet.doc.bufferedPageRange().count !== before) head();
    drawRow(sheet, row, boxes, table, height);
  }
  table.end();
  sheet.space(6);
}

type Box = { readonly x: number; readonly width: number; readonly align: "left" | "right" };
type Structure = ReturnType<SheetWriter["element"]>;

function boxesOf(columns: readonly Column[]): readonly Box[] {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const room = content.width - GUTTER * (columns.length - 1);
  let x = content.left;
  return columns.map(({ share, align = "left" }) => {
    const box = { x, width: (room * share) / shares, align };
    x += box.width + GUTTER;
    return box;
  });
}

function drawHead(
  sheet: SheetWriter,
  columns: readonly Column[],
  boxes: readonly Box[],
  table: Structure,
): void {
  const row = sheet.element("TR", table);
  columns.forEach(({ heading }, index) => {
    const box = boxes[index];
    if (box === undefined) return;
    const at = { x: box.x, y: sheet.y, width: box.width };
    sheet.marked(
      "TH",
      () => sheet.put(heading, at, { size: size.small, colour: ink.faint, align: box.align }),
      row,
    );
  });
  sheet.space(13);
  sheet.rule(ink.black, 0.8);
}

const cellOf = (cell: string | Cell): Cell => (typeof cell === "string" ? { text: cell } : cell);

function rowHeight(sheet: SheetWriter, row: Row, boxes: readonly Box[]): number {
  const heights = row.cells.map((each, index) => {
    const { text, detail } = cellOf(each);
    const width = widthOf(row, boxes, index);
    const main = sheet.heightOf(text, width, textStyle(isStrong(row), "left"));
    return main + (detail === undefined ? 0 : sheet.heightOf(detail, width, detailStyle));
  });
  return Math.max(...heights) + 2 * PADDING + (row.group === true ? 3 : 0);
}

const isStrong = (row: Row) => row.strong === true || row.group === true;
const widthOf = (row: Row, boxes: readonly Box[], index: number) =>
  row.group === true ? content.width : (boxes[index]?.width ?? 0);

function drawRow(
  sheet: SheetWriter,
  row: Row,
  boxes: readonly Box[],
  table: Structure,
  height: number,
): void {
  const tr = sheet.element("TR", table);
  const top = sheet.y + PADDING + (row.group === true ? 3 : 0);
  row.cells.forEach((each, index) => {
    const box = boxes[index];
    if (box === undefined) return;
    const { text, detail } = cellOf(each);
    const at = { x: box.x, y: top, width: widthOf(row, boxes, index) };
    const draw = () => {
      sheet.put(text, at, textStyle(isStrong(row), box.align));
      if (detail !== undefined)
        sheet.put(detail, { ...at, y: sheet.doc.y }, { ...detailStyle, align: box.align });
    };
    sheet.marked(row.group === true ? "TH" : "TD", draw, tr);
  });
  sheet.y += height;
  if (row.group !== true) sheet.rule(ink.rule, 0.4);
}
