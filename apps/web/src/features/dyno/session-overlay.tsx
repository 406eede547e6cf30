import type { SessionView } from "@buildproof/workshop";
import { momentText } from "@/design/moment-text";
import { CurveOverlay } from "@/design/plots/curve-overlay";
import type { ForecastBand } from "@/design/plots/curve-types";
import type { Figures } from "./asked-view";
import { channelStrips, curveRuns, type OverlayLine } from "./overlay-runs";
import { kindWords } from "./session-words";

interface SessionOverlayProps {
  /** In the order of drawing: what was first, what is last. */
  readonly sessions: readonly SessionView[];
  /** The runs of the only one are drawn, instead of its mean. */
  readonly showsRuns: boolean;
  readonly figures: Figures;
  readonly timeZone: string;
  readonly promise?: { readonly lowKw: number; readonly highKw: number };
}

/** Baseline, steps and proof over one another, each the mean of its runs that count. */
export function SessionOverlay({ sessions, showsRuns, figures, timeZone, promise }: SessionOverlayProps) {
  const newest = sessions.at(-1);
  if (!newest) return null;
  const lines = showsRuns ? runLines(newest) : sessionLines(sessions, timeZone);
  const drawn = lines.filter(({ points }) => points.length > 0);
  if (drawn.length === 0) return <p>No run of it counts, so there is no mean to draw.</p>;
  const speeds = drawn.flatMap(({ points }) => points.map(({ engineRpm }) => engineRpm));
  const showsPromise = promise && figures === "corrected" && !showsRuns;
  return (
    <div className="dyno-overlay">
      <CurveOverlay
        caption={showsRuns ? `Runs of the ${kindWords[newest.kind].toLowerCase()}` : captionOf(drawn)}
        measuredAt={`at the hubs, torque referred to engine speed, ${figures === "corrected" ? correctedTo(sessions) : "as observed, not corrected"}`}
        runs={curveRuns(drawn, figures)}
        strips={channelStrips(drawn, newest.readings)}
        {...(showsPromise ? { bands: [promiseBand(promise, speeds)] } : {})}
      />
    </div>
  );
}

function correctedTo(sessions: readonly SessionView[]): string {
  const codes = [...new Set(sessions.map(({ code }) => code))];
  return codes.length === 1
    ? `corrected to ${codes[0]}`
    : `each corrected to its own code (${codes.join(", ")}), so do not compare them`;
}

function captionOf(lines: readonly OverlayLine[]): string {
  const [first, last] = [lines[0]?.label ?? "", lines.at(-1)?.label ?? ""];
  return lines.length === 1
    ? `${first}, mean of its runs`
    : `${first} to ${last.toLowerCase()}, each the mean of its runs`;
}

/** By kind; with the day where there are several of a kind, and the hour where there are several in a day. */
function sessionLines(sessions: readonly SessionView[], timeZone: string): readonly OverlayLine[] {
  const short = sessions.map(({ kind }) => kindWords[kind]);
  const dated = sessions.map(({ kind, doneAt }) => `${kindWords[kind]} ${shortDay(doneAt, timeZone)}`);
  const isOnly = (labels: readonly string[], label: string) =>
    labels.filter((each) => each === label).length === 1;
  const timed = sessions.map(
    ({ doneAt }, index) => `${dated[index]}, ${momentText(doneAt, timeZone, "time")}`,
  );
  return sessions.map(({ id, points }, index) => {
    const [kind = "", day = ""] = [short[index], dated[index]];
    const label = isOnly(short, kind) ? kind : isOnly(dated, day) ? day : timed[index];
    const before = timed.slice(0, index).filter((each) => each === timed[index]).length;
    // Logs of single runs can come in within one minute.
    return { id, label: `${label}${before > 0 ? `, no. ${before + 1}` : ""}`, points };
  });
}

function shortDay(at: Date, timeZone: string): string {
  return momentText(at, timeZone).split(",").at(1)?.trim() ?? "";
}

function runLines({ runs }: SessionView): readonly OverlayLine[] {
  return runs.map(({ id, number, points, excludedBecause }) => ({
    id,
    label: excludedBecause === null ? `Run ${number}` : `Run ${number}, not counted`,
    points,
  }));
}

/** The promise is of the peak: wherever it lies, it belongs between these two. */
function promiseBand(
  { lowKw, highKw }: { lowKw: number; highKw: number },
  speeds: readonly number[],
): ForecastBand {
  return {
    label: `Promise ${lowKw}–${highKw}`,
    quantity: "power",
    points: [Math.min(...speeds), Math.max(...speeds)].map((engineRpm) => ({
      engineRpm,
      low: lowKw,
      high: highKw,
    })),
  };
}
