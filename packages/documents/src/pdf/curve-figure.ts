import { content, ink, size } from "./sheet-style";
import type { SheetWriter } from "./sheet-writer";

export interface CurvePoint {
  readonly speedRpm: number;
  readonly value: number;
}

export interface Curve {
  readonly label: string;
  readonly points: readonly CurvePoint[];
  /** Told apart by pattern and direct label, never by colour. */
  readonly pattern: "solid" | "dashed" | "dotted";
}

export interface CurveBand {
  readonly label: string;
  readonly points: readonly { readonly speedRpm: number; readonly low: number; readonly high: number }[];
}

export interface CurveFigure {
  readonly curves: readonly Curve[];
  readonly band?: CurveBand;
  readonly unit: string;
  readonly height: number;
  /** The figure in words, for those who do not see it. */
  readonly alt: string;
}

const LABEL_ROOM = 92;
const AXIS_ROOM = 30;

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (speedRpm: number) => number;
  readonly y: (value: number) => number;
  readonly speeds: readonly number[];
  readonly values: readonly number[];
}

/** Values over engine speed, drawn as vectors that print sharp. */
export function drawCurveFigure(sheet: SheetWriter, figure: CurveFigure): void {
  sheet.keep(figure.height + 8);
  const frame = frameOf(figure, sheet.y + 4);
  sheet.marked(
    "Figure",
    () => {
      drawGrid(sheet, frame, figure.unit);
      if (figure.band !== undefined) drawBand(sheet.doc, frame, figure.band);
      for (const curve of figure.curves) drawCurve(sheet.doc, frame, curve);
      drawLabels(sheet, frame, figure);
    },
    undefined,
    { alt: figure.alt },
  );
  sheet.space(figure.height + 12);
}

function frameOf({ curves, band, height }: CurveFigure, top: number): Frame {
  const speeds = [...curves.flatMap(({ points }) => points), ...(band?.points ?? [])].map(
    ({ speedRpm }) => speedRpm,
  );
  const values = [
    ...curves.flatMap(({ points }) => points.map(({ value }) => value)),
    ...(band?.points ?? []).map(({ high }) => high),
  ];
  if (speeds.length === 0) throw new RangeError("A figure needs at least one point.");
  const [slowest, fastest, most] = [Math.min(...speeds), Math.max(...speeds), Math.max(...values, 1)];
  const step = [10, 20, 25, 50, 100, 200, 500].find((each) => most / each <= 6) ?? 1_000;
  const ceiling = Math.ceil((most * 1.04) / step) * step;
  const left = content.left + AXIS_ROOM;
  const right = content.right - LABEL_ROOM;
  const bottom = top + height - 26;
  const span = Math.max(fastest - slowest, 1);
  return {
    left,
    right,
    top,
    bottom,
    x: (speedRpm) => left + ((speedRpm - slowest) / span) * (right - left),
    y: (value) => bottom - (Math.max(value, 0) / ceiling) * (bottom - top),
    speeds: multiples(Math.ceil(slowest / 1_000) * 1_000, fastest, 1_000),
    values: multiples(0, ceiling, step),
  };
}

function multiples(from: number, to: number, step: number): number[] {
  const list: number[] = [];
  for (let value = from; value <= to; value += step) list.push(value);
  return list;
}

function drawGrid(sheet: SheetWriter, frame: Frame, unit: string): void {
  const { doc } = sheet;
  const small = { size: size.small, colour: ink.faint } as const;
  for (const value of frame.values) {
    const y = frame.y(value);
    doc
      .moveTo(frame.left, y)
      .lineTo(frame.right, y)
      .lineWidth(value === 0 ? 0.8 : 0.3);
    doc.strokeColor(value === 0 ? ink.soft : ink.rule).stroke();
    sheet.put(
      String(value),
      { x: content.left, y: y - 5, width: AXIS_ROOM - 6 },
      { ...small, align: "right" },
    );
  }
  for (const speed of frame.speeds) {
    const x = frame.x(speed);
    doc
      .moveTo(x, frame.bottom)
      .lineTo(x, frame.bottom + 3)
      .lineWidth(0.5)
      .strokeColor(ink.soft)
      .stroke();
    doc.font("regular").fontSize(size.small).fillColor(ink.faint);
    const text = speed.toLocaleString("en-AU");
    doc.text(text, x - doc.widthOfString(text) / 2, frame.bottom + 5, { lineBreak: false });
  }
  sheet.put(
    `${unit} over engine speed in rpm`,
    { x: frame.left, y: frame.bottom + 16, width: frame.right - frame.left },
    small,
  );
}

function drawBand(doc: PDFKit.PDFDocument, frame: Frame, band: CurveBand): void {
  const upper = band.points.map(({ speedRpm, high }): Place => [frame.x(speedRpm), frame.y(high)]);
  const lower = band.points.map(({ speedRpm, low }): Place => [frame.x(speedRpm), frame.y(low)]);
  trace(doc, [...upper, ...lower.toReversed()]);
  doc.closePath().fillColor(ink.wash).fill();
  for (const edge of [upper, lower]) {
    trace(doc, edge);
    doc.lineWidth(0.8).strokeColor(ink.accent).stroke();
  }
}

function drawCurve(doc: PDFKit.PDFDocument, frame: Frame, { points, pattern }: Curve): void {
  trace(
    doc,
    points.map(({ speedRpm, value }): Place => [frame.x(speedRpm), frame.y(value)]),
  );
  doc.lineWidth(pattern === "solid" ? 1.6 : 1.1).strokeColor(ink.black);
  if (pattern === "dashed") doc.dash(5, { space: 3 });
  if (pattern === "dotted") doc.dash(1.2, { space: 2.4 });
  doc.stroke().undash();
}

type Place = readonly [x: number, y: number];

function trace(doc: PDFKit.PDFDocument, places: readonly Place[]): void {
  places.forEach(([x, y], index) => {
    if (index === 0) doc.moveTo(x, y);
    else doc.lineTo(x, y);
  });
}

/** Each label at the end of its own line, pushed apart where two would touch. */
function drawLabels(sheet: SheetWriter, frame: Frame, { curves, band }: CurveFigure): void {
  const bandEnd = band?.points.at(-1);
  const ends = curves.map(({ label, points }) => ({
    label,
    y: frame.y(points.at(-1)?.value ?? 0),
    colour: ink.black as string,
  }));
  if (band !== undefined && bandEnd !== undefined) {
    ends.push({ label: band.label, y: frame.y((bandEnd.low + bandEnd.high) / 2), colour: ink.accent });
  }
  let free = Number.NEGATIVE_INFINITY;
  for (const { label, y, colour } of ends.sort((one, other) => one.y - other.y)) {
    const box = { x: frame.right + 6, y: Math.max(y - 5, free), width: LABEL_ROOM - 6 };
    sheet.put(label, box, { size: size.small, colour });
    free = sheet.doc.y;
  }
}
