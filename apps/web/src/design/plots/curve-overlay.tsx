import { scaleLinear } from "d3-scale";
import type { ReactNode } from "react";
import { figureText } from "../figure-text";
import { CurvePanel } from "./curve-panel";
import { CurvePeaks } from "./curve-peaks";
import { CurveReadout } from "./curve-readout";
import type { ChannelStrip, CurveLimit, CurveRun, ForecastBand } from "./curve-types";
import { patternOf } from "./line-pattern";
import { commonDomain, panelGeometry } from "./panel-geometry";
import { rangeAt } from "./range-at";
import { type ReadoutRow, readoutRows } from "./readout-rows";
import { readoutSamples } from "./readout-samples";
import { type PlotPoint, peakOf } from "./value-at";

export interface CurveOverlayProps {
  readonly runs: readonly CurveRun[];
  /** Where the figures hold: "at the hubs, corrected to SAE J1349". Part of every figure. */
  readonly measuredAt: string;
  readonly caption: ReactNode;
  readonly bands?: readonly ForecastBand[];
  readonly powerLimits?: readonly CurveLimit[];
  readonly torqueLimits?: readonly CurveLimit[];
  readonly strips?: readonly ChannelStrip[];
  /** `medium` and `small` are drawn without the read-out. */
  readonly size?: "full" | "medium" | "small";
}

const panelHeightsPx = {
  full: { power: 260, torque: 210 },
  medium: { power: 200, torque: 150 },
  small: { power: 130, torque: 130 },
} as const;

interface Panel {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
  readonly heightPx: number;
  readonly fromZero: boolean;
  readonly band?: ForecastBand;
  readonly limits?: readonly CurveLimit[];
  /** By run, in their order. */
  readonly series: readonly (readonly PlotPoint[])[];
}

/**
 * Power and torque over engine speed for several runs, a panel for each quantity under one speed axis, and
 * a strip for each further channel. Drawn on the server; only the read-out line runs in the browser.
 */
export function CurveOverlay(props: CurveOverlayProps) {
  const runs = props.runs.map((run, index) => ({
    ...run,
    pattern: run.pattern ?? patternOf(index, props.runs.length),
  }));
  const panels = panelsOf(props);
  const xDomain = commonDomain([
    ...panels.flatMap((panel) => panel.series),
    ...(props.bands ?? []).map((band) => band.points.map((point) => ({ x: point.engineRpm }))),
  ]);
  const across = scaleLinear().domain(xDomain).range([0, 1]);
  const xTicks = across.ticks(8).map((rpm) => ({ rpm, across: across(rpm) }));
  const lastPower = panels[0]?.series.at(-1) ?? [];
  const rows = readoutRows(runs);
  const samples = readoutSamples({
    xDomain,
    series: rows.map((row) => {
      const runIndex = runs.findIndex(({ id }) => id === row.id);
      const strips = panels.slice(2).map((panel) => panel.series[runIndex] ?? []);
      return [...rowSeries(row), ...strips];
    }),
  });
  return (
    <figure className="plot" data-size={props.size ?? "full"}>
      <figcaption className="plot-caption">{props.caption}</figcaption>
      <CurveReadout
        samples={samples}
        xDomain={xDomain}
        startRpm={peakOf(lastPower)?.x ?? xDomain[0]}
        runs={rows.map(({ id, label }) => ({ id, label }))}
        quantities={panels.map(({ id, title, unit, decimals }) => ({ id, title, unit, decimals }))}
      >
        {panels.map((panel) => (
          <CurvePanel
            key={panel.id}
            title={panel.title}
            unit={panel.unit}
            decimals={panel.decimals}
            heightPx={panel.heightPx}
            runs={runs}
            xTicks={xTicks}
            bandLabel={panel.band?.label}
            marksPeaks={panel.fromZero}
            peakRange={(runId, rpm) => peakRange(runs, panel.id, runId, rpm)}
            geometry={geometryOf(panel, runs, xDomain)}
          />
        ))}
        <SpeedAxis xTicks={xTicks} />
      </CurveReadout>
      <CurvePeaks runs={runs} measuredAt={props.measuredAt} />
    </figure>
  );
}

function rowSeries({ points }: ReadoutRow): readonly (readonly PlotPoint[])[] {
  return [
    points.map(({ engineRpm, powerKw }) => ({ x: engineRpm, y: powerKw })),
    points.map(({ engineRpm, torqueNm }) => ({ x: engineRpm, y: torqueNm })),
  ];
}

function peakRange(runs: readonly CurveRun[], panel: string, runId: string, rpm: number) {
  const run = runs.find(({ id }) => id === runId);
  const range = run && rangeAt(run, rpm);
  return panel === "power" ? range?.powerKw : range?.torqueNm;
}

function geometryOf(panel: Panel, runs: readonly CurveRun[], xDomain: readonly [number, number]) {
  return panelGeometry({
    series: runs.map((run, index) => ({ id: run.id, points: panel.series[index] ?? [] })),
    xDomain,
    heightPx: panel.heightPx,
    band: panel.band?.points.map(({ engineRpm, low, high }) => ({ x: engineRpm, low, high })),
    limits: panel.limits,
    fromZero: panel.fromZero,
    tickCount: panel.heightPx > 150 ? 5 : 3,
  });
}

function panelsOf(props: CurveOverlayProps): readonly Panel[] {
  const heights = panelHeightsPx[props.size ?? "full"];
  const main = (id: "power" | "torque", pick: (point: CurveRun["points"][number]) => number): Panel => ({
    id,
    title: id === "power" ? "Power" : "Torque",
    unit: id === "power" ? "kW" : "N·m",
    decimals: 0,
    heightPx: heights[id],
    fromZero: true,
    band: props.bands?.find((band) => band.quantity === id),
    limits: id === "power" ? props.powerLimits : props.torqueLimits,
    series: props.runs.map((run) => run.points.map((point) => ({ x: point.engineRpm, y: pick(point) }))),
  });
  const strips = (props.strips ?? []).map(
    (strip): Panel => ({
      ...strip,
      heightPx: 84,
      fromZero: false,
      series: props.runs.map((run) => {
        const own = strip.series.find((series) => series.runId === run.id);
        return (own?.points ?? []).map((point) => ({ x: point.engineRpm, y: point.value }));
      }),
    }),
  );
  return [main("power", (point) => point.powerKw), main("torque", (point) => point.torqueNm), ...strips];
}

function SpeedAxis({
  xTicks,
}: {
  readonly xTicks: readonly { readonly rpm: number; readonly across: number }[];
}) {
  return (
    <svg className="plot-svg plot-speed" width="100%" height={34} aria-hidden="true" focusable="false">
      {xTicks.map(({ rpm, across }, index) => (
        <text
          key={rpm}
          className={index % 2 === 1 ? "plot-tick plot-tick-spare" : "plot-tick"}
          x={`${(across * 100).toFixed(2)}%`}
          y={14}
          textAnchor="middle"
        >
          {figureText(rpm)}
        </text>
      ))}
      <text className="plot-tick" x="100%" y={30} textAnchor="end">
        engine speed, rpm
      </text>
    </svg>
  );
}
