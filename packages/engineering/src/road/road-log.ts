import type { RoadLimit, RoadPhase, TracePoint } from "./acceleration-question";
import type { RoadVehicle } from "./road-vehicle";

/** Time and way from rest, and speed in m/s. */
export type RoadState = { readonly s: number; readonly ms: number; readonly m: number };

/** Gears count from 0; while one is changed nothing drives. */
export type Motion = { readonly gear: number; readonly shifting: boolean };

export type RoadLog = { readonly trace: readonly TracePoint[]; readonly phases: readonly RoadPhase[] };

export function limitOf(vehicle: RoadVehicle, state: RoadState, { gear, shifting }: Motion): RoadLimit {
  return shifting ? "shift" : vehicle.limit(gear, state.ms);
}

/** Keeps trace and phases. `enter` begins a phase, so that a jump of force has a point on either side. */
export function runLog(vehicle: RoadVehicle, traceS: number) {
  const trace: TracePoint[] = [];
  const phases: RoadPhase[] = [];
  let phase: { fromS: number; limit: RoadLimit } | null = null;
  const point = (state: RoadState, motion: Motion, limit: RoadLimit): void => {
    trace.push({
      s: state.s,
      kmh: state.ms * 3.6,
      m: state.m,
      gear: motion.gear + 1,
      engineRpm: vehicle.engineRpm(motion.gear, state.ms),
      driveN: motion.shifting ? 0 : vehicle.driveN(motion.gear, state.ms),
      limit,
    });
  };
  const close = (atS: number): void => {
    if (phase && atS > phase.fromS) phases.push({ fromS: phase.fromS, toS: atS, limit: phase.limit });
  };
  return {
    limit: (): RoadLimit | undefined => phase?.limit,
    enter(state: RoadState, motion: Motion): void {
      const limit = limitOf(vehicle, state, motion);
      if (phase?.limit !== limit) {
        close(state.s);
        phase = { fromS: state.s, limit };
      }
      point(state, motion, limit);
    },
    pass(state: RoadState, motion: Motion): void {
      const last = trace.at(-1)?.s ?? 0;
      if (state.s - last >= traceS - 1e-9)
        point(state, motion, phase?.limit ?? limitOf(vehicle, state, motion));
    },
    close(state: RoadState, motion: Motion): RoadLog {
      close(state.s);
      if ((trace.at(-1)?.s ?? 0) < state.s) point(state, motion, phase?.limit ?? "engine");
      return { trace, phases };
    },
  };
}
