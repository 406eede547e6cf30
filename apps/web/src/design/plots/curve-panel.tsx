import { figureText } from "../figure-text";
import type { LinePattern } from "./curve-types";
import { dashesOf } from "./line-pattern";
import { PANEL_WIDTH, type PanelGeometry } from "./panel-geometry";
import { spreadLabels } from "./spread-labels";

interface CurvePanelProps {
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly heightPx: number;
  readonly geometry: PanelGeometry;
  readonly xTicks: readonly { readonly rpm: number; readonly across: number }[];
  readonly runs: readonly { readonly id: string; readonly label: string; readonly pattern: LinePattern }[];
  readonly bandLabel?: string;
  readonly marksPeaks: boolean;
  /** Of a forecast, the range at its peak: a bare figure would promise it. */
  readonly peakRange: (
    runId: string,
    rpm: number,
  ) => { readonly low: number; readonly high: number } | undefined;
}

const LABEL_GAP_PX = 15;

/** One quantity over engine speed. Lines stretch with the width; words and marks do not. */
export function CurvePanel(props: CurvePanelProps) {
  const { title, unit, decimals, heightPx, geometry, xTicks, runs } = props;
  return (
    <div className="plot-panel">
      <p className="plot-panel-title">
        {title} <span className="figure-unit">{unit}</span>
      </p>
      <svg className="plot-svg" width="100%" height={heightPx} aria-hidden="true" focusable="false">
        {xTicks.map(({ rpm, across }) => (
          <line
            key={rpm}
            className="plot-grid"
            x1={percent(across)}
            x2={percent(across)}
            y1={0}
            y2={heightPx}
          />
        ))}
        {geometry.ticks.map(({ value, y }) => (
          <g key={value}>
            <line className="plot-grid" x1="0" x2="100%" y1={y} y2={y} />
            <text className="plot-tick" x={-8} y={y} dy="0.34em" textAnchor="end">
              {figureText(value, tickDecimals(geometry.ticks, decimals))}
            </text>
          </g>
        ))}
        <line className="plot-frame" x1="0" x2="100%" y1={heightPx} y2={heightPx} />
        <svg
          className="plot-lines"
          width="100%"
          height={heightPx}
          viewBox={`0 0 ${PANEL_WIDTH} ${heightPx}`}
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          {geometry.band && <Band band={geometry.band} />}
          {geometry.lines.map((drawn) => {
            const run = runs.find((candidate) => candidate.id === drawn.id);
            const dashes = dashesOf(run?.pattern ?? "solid");
            return <path key={drawn.id} className="plot-line" d={drawn.path} strokeDasharray={dashes} />;
          })}
        </svg>
        <Limits limits={geometry.limits} />
        {props.marksPeaks && <Peaks lines={geometry.lines} decimals={decimals} peakRange={props.peakRange} />}
        <EndLabels {...props} />
      </svg>
    </div>
  );
}

function Band({ band }: { readonly band: NonNullable<PanelGeometry["band"]> }) {
  return (
    <>
      <path className="plot-band" d={band.area} />
      <path className="plot-band-edge" d={band.low} />
      <path className="plot-band-edge" d={band.high} />
    </>
  );
}

function Limits({ limits }: Pick<PanelGeometry, "limits">) {
  return limits.map((limit) => (
    <g key={limit.label}>
      <line className="plot-limit" x1="0" x2="100%" y1={limit.y} y2={limit.y} />
      <text className="plot-limit-label" x={6} y={limit.y < 16 ? limit.y + 13 : limit.y - 5}>
        {limit.label}
      </text>
    </g>
  ));
}

type PeaksProps = Pick<PanelGeometry, "lines"> & Pick<CurvePanelProps, "decimals" | "peakRange">;

function Peaks({ lines, decimals, peakRange }: PeaksProps) {
  const peaks = lines.flatMap(({ id, peak }) => (peak ? [{ id, ...peak }] : []));
  return peaks.map((peak, index) => {
    // Two peaks on one spot: both marks stay, the later run keeps its figure, the other's is in the table below.
    const range = peakRange(peak.id, peak.x);
    const [near, beside] = range ? [34, 0.22] : [14, 0.08];
    const isCovered = peaks
      .slice(index + 1)
      .some((other) => Math.abs(other.y - peak.y) < near && Math.abs(other.across - peak.across) < beside);
    return (
      <g key={peak.id}>
        <circle className="plot-peak" cx={percent(peak.across)} cy={peak.y} r={4} />
        {!isCovered && (
          <text
            className="plot-peak-figure"
            x={percent(peak.across)}
            y={peak.y - 9}
            // At the edge it would stand in the names of the lines.
            textAnchor={peak.across > 0.9 ? "end" : "middle"}
          >
            {peakText(peak, decimals, range)}
          </text>
        )}
      </g>
    );
  });
}

function peakText(
  { value }: { readonly value: number },
  decimals: number,
  range: ReturnType<CurvePanelProps["peakRange"]>,
): string {
  if (!range) return figureText(value, decimals);
  return `${figureText(range.low, decimals)}–${figureText(range.high, decimals)}`;
}

function EndLabels({ geometry, runs, bandLabel, heightPx }: CurvePanelProps) {
  const ends = geometry.lines
    .filter((drawn) => drawn.path !== "")
    .map((drawn) => ({ id: drawn.id, y: drawn.endY, text: labelOf(runs, drawn.id) }));
  if (geometry.band && bandLabel) ends.push({ id: "band", y: geometry.band.endY, text: bandLabel });
  const placed = spreadLabels(
    ends.map((end) => end.y),
    { gap: LABEL_GAP_PX, low: 6, high: heightPx - 4 },
  );
  return ends.map((end, index) => (
    <text key={end.id} className="plot-end-label" x="100%" y={placed[index]} dy="0.34em">
      {end.text}
    </text>
  ));
}

function labelOf(runs: CurvePanelProps["runs"], id: string): string {
  return runs.find((run) => run.id === id)?.label ?? "";
}

function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(2)}%`;
}

function tickDecimals(ticks: PanelGeometry["ticks"], most: number): number {
  return ticks.every((tick) => Number.isInteger(tick.value)) ? 0 : Math.max(1, most);
}
