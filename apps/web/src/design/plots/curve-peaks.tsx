import { Figure } from "../figure";
import { figureText } from "../figure-text";
import type { CurveRun, LinePattern } from "./curve-types";
import { dashesOf } from "./line-pattern";
import { rangeAt } from "./range-at";
import { peakOf } from "./value-at";

interface CurvePeaksProps {
  readonly runs: readonly (CurveRun & { readonly pattern: LinePattern })[];
  readonly measuredAt: string;
}

/** The overlay in figures: each run's line, its peaks and where they are. */
export function CurvePeaks({ runs, measuredAt }: CurvePeaksProps) {
  return (
    <table className="ruled-table plot-peaks">
      <caption className="fine">Peaks {measuredAt}</caption>
      <thead>
        <tr>
          <th scope="col">Run</th>
          <th scope="col" data-align="figure">
            Power
          </th>
          <th scope="col" data-align="figure">
            Torque
          </th>
        </tr>
      </thead>
      <tbody>
        {runs.map((run) => (
          <tr key={run.id}>
            <th scope="row">
              <LineSample pattern={run.pattern} />
              {run.label}
            </th>
            <td data-align="figure">
              <Peak
                points={run.points.map((point) => ({ x: point.engineRpm, y: point.powerKw }))}
                range={(rpm) => rangeAt(run, rpm)?.powerKw}
                unit="kW"
              />
            </td>
            <td data-align="figure">
              <Peak
                points={run.points.map((point) => ({ x: point.engineRpm, y: point.torqueNm }))}
                range={(rpm) => rangeAt(run, rpm)?.torqueNm}
                unit="N·m"
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PeakProps {
  readonly points: Parameters<typeof peakOf>[0];
  readonly range: (rpm: number) => { readonly low: number; readonly high: number } | undefined;
  readonly unit: string;
}

function Peak({ points, range, unit }: PeakProps) {
  const peak = peakOf(points);
  if (!peak) return <>not measured</>;
  const between = range(peak.x);
  if (!between) {
    return (
      <>
        <Figure value={peak.y} unit={unit} /> <span className="fine">at</span>{" "}
        <Figure value={peak.x} unit="rpm" />
      </>
    );
  }
  return (
    <>
      {figureText(between.low)}–<Figure value={between.high} unit={unit} />
      <span className="sentence-note">
        expected {figureText(peak.y)} at {figureText(peak.x)} rpm
      </span>
    </>
  );
}

function LineSample({ pattern }: { readonly pattern: LinePattern }) {
  return (
    <svg className="plot-sample" width={40} height={10} aria-hidden="true" focusable="false">
      <line className="plot-line" x1={0} x2={40} y1={5} y2={5} strokeDasharray={dashesOf(pattern)} />
    </svg>
  );
}
