export type PlotPoint = readonly [x: number, y: number];

/** Lines are told apart by their pattern and their label, not by colour. */
export type PlotLine = {
  readonly label: string;
  readonly points: readonly PlotPoint[];
  readonly dash?: string;
};

export type LinePlot = {
  readonly title: string;
  readonly x: { readonly label: string; readonly ticks: readonly number[] };
  readonly y: { readonly label: string; readonly ticks: readonly number[] };
  readonly lines: readonly PlotLine[];
  /** Shaded between two lines of points. */
  readonly band?: { readonly low: readonly PlotPoint[]; readonly high: readonly PlotPoint[] };
};

const WIDTH = 720;
const HEIGHT = 380;
const LABEL_HEIGHT = 15;
const BOX = { left: 64, right: 560, top: 40, bottom: 330 };

/** A plot as the text of an SVG file: ink on paper, so that it prints. */
export function linePlot(plot: LinePlot): string {
  const { x, y, band } = plot;
  const acrossOf = scale(x.ticks, BOX.left, BOX.right);
  const downOf = scale(y.ticks, BOX.bottom, BOX.top);
  const path = (points: readonly PlotPoint[]) =>
    points.map(([across, down]) => `${acrossOf(across).toFixed(1)},${downOf(down).toFixed(1)}`).join(" ");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" font-family="sans-serif" font-size="13" fill="#1d1d1b">`,
    `<title>${plot.title}</title>`,
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="#fbfaf6"/>`,
    text(BOX.left, 24, plot.title, "start", ' font-size="15"'),
    ...x.ticks.flatMap((tick) => [
      rule(acrossOf(tick), BOX.top, acrossOf(tick), BOX.bottom),
      text(acrossOf(tick), BOX.bottom + 18, thousands(tick), "middle"),
    ]),
    ...y.ticks.flatMap((tick) => [
      rule(BOX.left, downOf(tick), BOX.right, downOf(tick)),
      text(BOX.left - 8, downOf(tick) + 4, thousands(tick), "end"),
    ]),
    text((BOX.left + BOX.right) / 2, BOX.bottom + 38, x.label, "middle"),
    text(8, BOX.top - 6, y.label, "start"),
    band
      ? `<polygon points="${path(band.low)} ${path([...band.high].reverse())}" fill="#1d1d1b" fill-opacity="0.12"/>`
      : "",
    ...plot.lines.map(
      ({ points, dash = "" }) =>
        `<polyline points="${path(points)}" fill="none" stroke="#1d1d1b" stroke-width="2" stroke-dasharray="${dash}"/>`,
    ),
    ...labelPlaces(plot.lines, downOf).map(({ label, down }) =>
      text(BOX.right + 8, down + 4, label, "start"),
    ),
    "</svg>",
    "",
  ]
    .filter((line, at, all) => line !== "" || at === all.length - 1)
    .join("\n");
}

/** Each label beside the end of its line, moved down as far as the one above it asks. */
function labelPlaces(lines: readonly PlotLine[], downOf: (value: number) => number) {
  const places = lines
    .map(({ label, points }) => ({ label, down: downOf(points.at(-1)?.[1] ?? 0) }))
    .sort((a, b) => a.down - b.down);
  let free = Number.NEGATIVE_INFINITY;
  return places.map(({ label, down }) => {
    const place = { label, down: Math.max(down, free) };
    free = place.down + LABEL_HEIGHT;
    return place;
  });
}

function scale(ticks: readonly number[], from: number, to: number): (value: number) => number {
  const first = ticks[0] ?? 0;
  const last = ticks.at(-1) ?? 1;
  return (value) => from + ((value - first) / (last - first)) * (to - from);
}

function rule(x1: number, y1: number, x2: number, y2: number): string {
  return `<line x1="${x1.toFixed(1)}" y1="${y1.toFixed(1)}" x2="${x2.toFixed(1)}" y2="${y2.toFixed(1)}" stroke="#1d1d1b" stroke-opacity="0.15"/>`;
}

function text(x: number, y: number, words: string, anchor: string, more = ""): string {
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}"${more}>${words}</text>`;
}

function thousands(value: number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, ",");
}
