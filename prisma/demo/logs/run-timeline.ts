import type { EngineCurves } from "./engine-curves";

/** What the operator does at one instant of a run. */
export interface Moment {
  readonly engineRpm: number;
  /** Share of full-load torque; negative on the overrun. */
  readonly load: number;
}

const IDLE_RPM = 680;
const IDLE_S = 8;
const SPIN_UP_S = 3;
const SOAK_S = 9;
const PULL_DOWN_S = 1.2;
/** Time from closed to full torque when the throttle opens. */
const TIP_IN_S = 0.35;
const COAST_S = 5;

/**
 * Idle, up to a light hold, soak, pulled down by the brake, the sweep itself, and off. The pull-down below the
 * hold is what shows, in the file, where the sweep begins.
 */
export function runTimeline({ fromRpm, toRpm }: EngineCurves, rampRpmPerS: number) {
  const holdRpm = fromRpm + 350;
  const sweepS = (toRpm - fromRpm) / rampRpmPerS;
  const phases: readonly { readonly lastsS: number; readonly at: (part: number, s: number) => Moment }[] = [
    { lastsS: IDLE_S, at: () => ({ engineRpm: IDLE_RPM, load: 0 }) },
    { lastsS: SPIN_UP_S, at: (part) => ({ engineRpm: IDLE_RPM + (holdRpm - IDLE_RPM) * part, load: 0.06 }) },
    { lastsS: SOAK_S, at: () => ({ engineRpm: holdRpm, load: 0.09 }) },
    { lastsS: PULL_DOWN_S, at: (part) => ({ engineRpm: holdRpm + (fromRpm - holdRpm) * part, load: 0.15 }) },
    {
      lastsS: sweepS,
      at: (part, s) => ({
        engineRpm: fromRpm + (toRpm - fromRpm) * part,
        load: Math.min(1, 0.15 + s / TIP_IN_S),
      }),
    },
    { lastsS: COAST_S, at: (part) => ({ engineRpm: toRpm + (IDLE_RPM - toRpm) * part ** 0.7, load: -0.09 }) },
  ];
  const lastsS = phases.reduce((sum, phase) => sum + phase.lastsS, 0);
  const momentAt = (timeS: number): Moment => {
    let left = timeS;
    for (const phase of phases) {
      if (left < phase.lastsS) return phase.at(left / phase.lastsS, left);
      left -= phase.lastsS;
    }
    return { engineRpm: IDLE_RPM, load: 0 };
  };
  return { lastsS, momentAt };
}
