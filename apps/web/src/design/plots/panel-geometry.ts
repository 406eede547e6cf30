import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";
import type { CurveLimit } from "./curve-types";
import { type PlotPoint, peakOf } from "./value-at";

/** The drawing is stretched to the width there is; across it counts in thousandths. */
export const PANEL_WIDTH = 1000;

// A scale cannot divide a span that is lost in the digits of its ends.
const LEAST_SPAN = 1e-6;

export interface PanelInput {
  readonly series: readonly { readonly id: string; readonly points: readonly PlotPoint[] }[];
  readonly xDomain: readonly [number, number];
  readonly heightPx: number;
  readonly band?: readonly { readonly x: number; readonly low: number; readonly high: number }[];
  readonly limits?: readonly CurveLimit[];
  /** Power and torque stand on zero; a mixture or a temperature does not. */
  readonly fromZero: boolean;
  readonly tickCount: number;
}

export interface PanelGeometry {
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  readonly lines: readonly PanelLine[];
  readonly band: {
    readonly area: string;
    readonly low: string;
    readonly high: string;
    readonly endY: number;
  } | null;
  readonly limits: readonly (CurveLimit & { readonly y: number })[];
}

interface PanelLine {
  readonly id: string;
  readonly path: string;
  readonly endY: number;
  readonly peak: {
    readonly across: number;
    readonly y: number;
    readonly x: number;
    readonly value: number;
  } | null;
}

/** Paths and places of one panel: x in thousandths of its width, y in pixels from its top. */
export function panelGeometry(input: PanelInput): PanelGeometry {
  const across = scaleLinear().domain(input.xDomain).range([0, PANEL_WIDTH]);
  const [low, high] = yDomain(input);
  const up = scaleLinear().domain([low, high]).nice(input.tickCount).range([input.heightPx, 0]);
  const path = line<PlotPoint>(
    (point) => across(point.x),
    (point) => up(point.y),
  ).digits(1);
  return {
    ticks: up.ticks(input.tickCount).map((value) => ({ value, y: up(value) })),
    lines: input.series.map(({ id, points }) => {
      const peak = peakOf(points);
      return {
        id,
        path: path(points) ?? "",
        endY: up(points.at(-1)?.y ?? 0),
        peak: peak && { across: across(peak.x) / PANEL_WIDTH, y: up(peak.y), x: peak.x, value: peak.y },
      };
    }),
    band: input.band && input.band.length > 1 ? bandPaths(input.band, across, up) : null,
    limits: (input.limits ?? []).map((limit) => ({ ...limit, y: up(limit.value) })),
  };
}

type Scale = (value: number) => number;
type BandPoint = NonNullable<PanelInput["band"]>[number];

function bandPaths(band: readonly BandPoint[], across: Scale, up: Scale): PanelGeometry["band"] {
  const edge = (pick: (point: BandPoint) => number) =>
    line<BandPoint>(
      (point) => across(point.x),
      (point) => up(pick(point)),
    ).digits(1)(band) ?? "";
  const fill = area<BandPoint>(
    (point) => across(point.x),
    (point) => up(point.low),
    (point) => up(point.high),
  );
  const last = band.at(-1);
  return {
    area: fill.digits(1)(band) ?? "",
    low: edge((point) => point.low),
    high: edge((point) => point.high),
    endY: last ? up((last.low + last.high) / 2) : 0,
  };
}

function yDomain(input: PanelInput): [number, number] {
  const values = [
    ...input.series.flatMap(({ points }) => points.map((point) => point.y)),
    ...(input.band ?? []).flatMap((point) => [point.low, point.high]),
    ...(input.limits ?? []).map((limit) => limit.value),
    ...(input.fromZero ? [0] : []),
  ];
  if (values.length === 0) return [0, 1];
  const low = values.reduce((least, value) => Math.min(least, value));
  const high = values.reduce((most, value) => Math.max(most, value));
  return high - low < LEAST_SPAN ? [low - 1, high + 1] : [low, high];
}

/** The engine speeds every series and band spans together. */
export function commonDomain(series: readonly (readonly { readonly x: number }[])[]): [number, number] {
  const ends = series.flatMap((points) => {
    const first = points[0];
    const last = points.at(-1);
    return first && last ? [first.x, last.x] : [];
  });
  if (ends.length === 0) return [0, 1];
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  return high - low < LEAST_SPAN ? [low - 1, high + 1] : [low, high];
}
