/** The channels a log may carry beside speed and power. */
export const runChannels = ["boostKPa", "lambda", "fuelRailMPa", "intakeTempC"] as const;
export type RunChannel = (typeof runChannels)[number];

/** One sample of a dyno log. Power, torque or both must be there; the rest is optional. */
export type RunRow = {
  readonly timeS: number;
  readonly engineRpm: number;
  /** Sum over the hubs. */
  readonly hubPowerKw?: number | undefined;
  /** Sum over the hubs; turning at `hubRpm` when that is given, otherwise referred to engine speed. */
  readonly hubTorqueNm?: number | undefined;
  readonly hubRpm?: number | undefined;
} & { readonly [channel in RunChannel]?: number | undefined };
