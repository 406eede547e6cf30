import { ImpossibleInputError } from "@buildproof/units";
import type { AccelerationQuestion, RoadPhase, RunEnd, TracePoint } from "./acceleration-question";
import { checkAccelerationQuestion } from "./check-acceleration-question";
import type { RoadState } from "./road-log";
import { type Goal, type RoadScheme, roadRun } from "./road-run";
import { roadVehicle } from "./road-vehicle";

export type Acceleration = {
  /** By the clock, which starts after the roll-out; null where the speed is never reached. */
  readonly times: readonly { readonly targetKmh: number; readonly s: number | null }[];
  /** Ways are from rest; the time is by the clock. */
  readonly distances: readonly {
    readonly m: number;
    readonly s: number | null;
    readonly kmh: number | null;
  }[];
  /** What the clock leaves out; null where none was asked for. */
  readonly rollOut: { readonly m: number; readonly s: number; readonly kmh: number } | null;
  /** From rest. */
  readonly trace: readonly TracePoint[];
  readonly phases: readonly RoadPhase[];
  readonly end: { readonly s: number; readonly kmh: number; readonly m: number; readonly because: RunEnd };
};

const SCHEME: RoadScheme = { stepS: 0.02, traceS: 0.1 };

/**
 * A full-throttle run from rest, gear by gear. For closed courses only. A forecast is good to about
 * a fifth on a single time without the vehicle's own data; differences between two builds are far better.
 *
 * @source  m·k·dv/dt = drive − rolling − slope − air, integrated in fixed steps (road-run.ts).
 * @valid   Straight, dry, even road; no wheelspin beyond the grip, no lift between gears but the shift time.
 * @vectors shared/reference/acceleration.json, shared/reference/open-quarter-mile.csv
 * @throws  ImpossibleInputError for a vehicle or a question that cannot be.
 */
export function acceleration(question: AccelerationQuestion, scheme: RoadScheme = SCHEME): Acceleration {
  checkAccelerationQuestion(question);
  const { targetsKmh, distancesM, rollOutM = 0 } = question;
  const speeds = targetsKmh.map((kmh): Goal => ({ reached: ({ ms }) => ms * 3.6 >= kmh, at: null }));
  const ways = distancesM.map((metres): Goal => ({ reached: ({ m }) => m >= metres, at: null }));
  const start: Goal = { reached: ({ m }) => m >= rollOutM, at: null };
  const goals = [...speeds, ...ways, ...(rollOutM > 0 ? [start] : [])];
  const { trace, phases, end } = roadRun(roadVehicle(question), question.shiftTimeS, goals, scheme);
  const clockS = rollOutM > 0 ? (start.at?.s ?? null) : 0;
  return {
    times: targetsKmh.map((targetKmh, at) => ({
      targetKmh,
      s: byClock(speeds[at]?.at ?? null, clockS, `targetsKmh[${at}]`),
    })),
    distances: distancesM.map((m, at) => {
      const passed = ways[at]?.at ?? coasted(end, m);
      return { m, s: byClock(passed, clockS, `distancesM[${at}]`), kmh: passed && passed.ms * 3.6 };
    }),
    rollOut: start.at && { m: rollOutM, s: start.at.s, kmh: start.at.ms * 3.6 },
    trace,
    phases,
    end: { s: end.s, kmh: end.ms * 3.6, m: end.m, because: end.because },
  };
}

function byClock(passed: RoadState | null, clockS: number | null, path: string): number | null {
  if (!passed || clockS === null) return null;
  if (passed.s >= clockS) return passed.s - clockS;
  throw new ImpossibleInputError(
    "within-roll-out",
    "This is reached before the clock starts: ask for more, or for a shorter rollOutM.",
    path,
  );
}

/** The rest of the way at the speed that no longer rises. */
function coasted(end: RoadState & { readonly because: RunEnd }, metres: number): RoadState | null {
  if (end.because !== "top-speed" && end.because !== "rev-limit") return null;
  return { s: end.s + (metres - end.m) / end.ms, ms: end.ms, m: metres };
}
