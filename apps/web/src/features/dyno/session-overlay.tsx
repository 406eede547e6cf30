import type { SessionView } from "@buildproof/workshop";
import { momentText } from "@/design/moment-text";
import { CurveOverlay } from "@/design/plots/curve-overlay";
import type { ForecastBand } from "@/design/plots/curve-types";
import { channelStrips, curveRuns, type Figures, type OverlayLine } from "./overlay-runs";
import { kindWords } from "./session-words";

interface SessionOverlayProps {
  /** In the order of drawing: what was first, what is last. */
  readonly sessions: readonly SessionView[];
  /** Its runs are drawn one by one instead of the sessions' means. */
  readonly only?: string | undefined;
  readonly figures: Figures;
  readonly timeZone: string;
  readonly promise?: { readonly lowKw: number; readonly highKw: number } | null;
}

/** Baseline, steps and proof over one another, each the mean of its runs that count. */
export function SessionOverlay({ sessions, only, figures, timeZone, promise }: SessionOverlayProps) {
  const one = sessions.find(({ id }) => id === only);
  const lines = one ? runLines(one) : sessionLines(sessions, timeZone);
  const drawn = lines.filter(({ points }) => points.length > 0);
  const newest = one ?? sessions.at(-1);
  if (drawn.length === 0 || !newest) return null;
  const from = drawn.flatMap(({ points }) => points.map(({ engineRpm }) => engineRpm));
  return (
    <div className="dyno-overlay">
      <CurveOverlay
        caption={one ? `Runs of the ${kindWords[one.kind].toLowerCase()}` : captionOf(drawn)}
        measuredAt={`at the hubs, torque referred to engine speed, ${figures === "corrected" ? `corrected to ${newest.code}` : "as observed, not corrected"}`}
        runs={curveRuns(drawn, figures)}
        strips={channelStrips(drawn, newest.readings)}
        {...(promise && figures === "corrected" && !one ? { bands: [promiseBand(promise, from)] } : {})}
      />
    </div>
  );
}

function captionOf(lines: readonly OverlayLine[]): string {
  const [first, last] = [lines[0]?.label ?? "", lines.at(-1)?.label ?? ""];
  return lines.length === 1
    ? `${first}, mean of its runs`
    : `${first} to ${last.toLowerCase()}, each the mean of its runs`;
}

function sessionLines(sessions: readonly SessionView[], timeZone: string): readonly OverlayLine[] {
  const times = new Map<string, number>();
  for (const { kind } of sessions) times.set(kind, (times.get(kind) ?? 0) + 1);
  const newest = sessions.at(-1)?.id;
  return sessions.map(({ id, kind, doneAt, points }) => {
    // Where there are several of a kind, the earlier ones carry their day.
    const isAlone = (times.get(kind) ?? 0) === 1 || id === newest;
    const label = isAlone ? kindWords[kind] : `${kindWords[kind]} ${shortDay(doneAt, timeZone)}`;
    return { id, label, points };
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
