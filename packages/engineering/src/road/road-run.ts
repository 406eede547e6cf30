import type { RoadLimit, RunEnd } from "./acceleration-question";
import { limitOf, type Motion, type RoadLog, type RoadState, runLog } from "./road-log";
import type { RoadVehicle } from "./road-vehicle";

/** Longest run worth following. */
const LONGEST_S = 600;
/** Below this the vehicle is at its top speed. */
const STANDSTILL_MS2 = 1e-4;
const HALVINGS = 40;
/** Per second of step, how much of its speed a vehicle may gain in one step; and the speed that counts at rest. */
const GROWTH_PER_S = 10;
const CRAWL_MS = 0.02;

/** A speed or a distance waited for, and when it came. */
export type Goal = { readonly reached: (state: RoadState) => boolean; at: RoadState | null };

export type RoadScheme = { readonly stepS: number; readonly traceS: number };

type RoadRun = RoadLog & {
  readonly end: RoadState & { readonly because: RunEnd };
};

/**
 * From rest until every goal is met or none can be any more. Fixed steps of the classical Runge–Kutta
 * scheme; a step that would pass a shift, a change of limit or a goal is halved until it ends there.
 *
 * @source  Classical fourth-order Runge–Kutta, any numerical-analysis textbook.
 * @valid   Error measured by halving the step: docs/engineering/acceleration.md.
 */
export function roadRun(
  vehicle: RoadVehicle,
  shiftTimeS: number,
  goals: Goal[],
  scheme: RoadScheme,
): RoadRun {
  const log = runLog(vehicle, scheme.traceS);
  let state: RoadState = { s: 0, ms: 0, m: 0 };
  let motion: Motion = { gear: 0, shifting: false };
  let shiftEndS = 0;
  // Of the state and motion at the time they are called: made once, because a run has a thousand steps.
  const now = { ms2: 0 };
  const take = (h: number) => step(vehicle, state, motion, now.ms2, h);
  const happens = (later: RoadState) => !motion.shifting && changes(vehicle, later, motion.gear, log.limit());
  log.enter(state, motion);
  for (;;) {
    now.ms2 = acceleration(vehicle, motion, state.ms);
    const because = over(vehicle, state, motion, now.ms2, goals);
    if (because) return { ...log.close(state, motion), end: { ...state, because } };
    const whole = motion.shifting
      ? Math.min(scheme.stepS, shiftEndS - state.s)
      : steady(state, now.ms2, scheme.stepS);
    const next = stepUntil(take, whole, happens);
    meet(goals, state, next.at, take, next.h);
    state = next.at;
    log.pass(state, motion);
    if (motion.shifting && state.s >= shiftEndS - 1e-12) {
      motion = { gear: motion.gear, shifting: false };
      log.enter(state, motion);
    } else if (next.happened && leaves(vehicle, state, motion.gear)) {
      motion = { gear: motion.gear + 1, shifting: shiftTimeS > 0 };
      shiftEndS = state.s + shiftTimeS;
      log.enter(state, motion);
    } else if (next.happened && log.limit() !== limitOf(vehicle, state, motion)) {
      log.enter(state, motion);
    }
  }
}

function acceleration(vehicle: RoadVehicle, { gear, shifting }: Motion, speedMs: number): number {
  const speed = Math.max(speedMs, 0);
  const net = (shifting ? 0 : vehicle.driveN(gear, speed)) - vehicle.resistanceN(speed);
  return speedMs <= 0 && net < 0 ? 0 : net / vehicle.effectiveMassKg;
}

/** The step, shortened near rest, where the force of a given power rises without bound. */
function steady({ ms }: RoadState, ms2: number, stepS: number): number {
  const gain = Math.abs(ms2) * stepS;
  const allowed = GROWTH_PER_S * stepS * Math.max(ms, CRAWL_MS);
  return gain > allowed ? (stepS * allowed) / gain : stepS;
}

/** `k1`, the acceleration now, is the same however long the step. */
function step(vehicle: RoadVehicle, from: RoadState, motion: Motion, k1: number, h: number): RoadState {
  const k2 = acceleration(vehicle, motion, from.ms + (h / 2) * k1);
  const k3 = acceleration(vehicle, motion, from.ms + (h / 2) * k2);
  const k4 = acceleration(vehicle, motion, from.ms + h * k3);
  return {
    s: from.s + h,
    ms: Math.max(0, from.ms + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)),
    m: from.m + h * from.ms + ((h * h) / 6) * (k1 + k2 + k3),
  };
}

type Stepped = { readonly at: RoadState; readonly h: number; readonly happened: boolean };

/** One step, cut short just past the first moment at which something happens. */
function stepUntil(
  take: (h: number) => RoadState,
  h: number,
  happens: (state: RoadState) => boolean,
): Stepped {
  const whole = take(h);
  if (!happens(whole)) return { at: whole, h, happened: false };
  let [before, after] = [0, h];
  for (let halving = 0; halving < HALVINGS && after - before > 1e-10; halving += 1) {
    const middle = (before + after) / 2;
    if (happens(take(middle))) after = middle;
    else before = middle;
  }
  return { at: take(after), h: after, happened: true };
}

/** Notes the moment of every goal met between two states. */
function meet(
  goals: Goal[],
  from: RoadState,
  to: RoadState,
  take: (h: number) => RoadState,
  h: number,
): void {
  for (const goal of goals) {
    if (goal.at || goal.reached(from) || !goal.reached(to)) continue;
    goal.at = stepUntil(take, h, goal.reached).at;
  }
}

function changes(vehicle: RoadVehicle, to: RoadState, gear: number, limit: RoadLimit | undefined): boolean {
  return to.ms >= (vehicle.leaveAtMs[gear] ?? 0) || vehicle.limit(gear, to.ms) !== limit;
}

/** Whether the next gear is taken: it is time, and the next one pulls. */
function leaves(vehicle: RoadVehicle, { ms }: RoadState, gear: number): boolean {
  if (gear === vehicle.topGear || ms < (vehicle.leaveAtMs[gear] ?? 0)) return false;
  return vehicle.driveN(gear + 1, ms) > vehicle.resistanceN(ms);
}

function over(
  vehicle: RoadVehicle,
  state: RoadState,
  motion: Motion,
  ms2: number,
  goals: readonly Goal[],
): RunEnd | null {
  if (goals.every(({ at }) => at)) return "all-reached";
  if (state.s >= LONGEST_S) return "too-long";
  if (motion.shifting) return null;
  if (state.ms >= (vehicle.leaveAtMs[motion.gear] ?? 0) && !leaves(vehicle, state, motion.gear))
    return "rev-limit";
  if (ms2 > STANDSTILL_MS2) return null;
  return state.ms > 0 ? "top-speed" : "cannot-start";
}
