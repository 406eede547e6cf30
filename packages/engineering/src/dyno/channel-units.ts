import type { ChannelExtremes, ReducedRun, RunRefusal } from "./reduced-run";
import { type RunChannel, runChannels } from "./run-row";

type Plausible = readonly [least: number, most: number];

/** What a channel can read under load, generously. Outside it is another unit: common practice, no source. */
const PLAUSIBLE: Readonly<Record<RunChannel, Plausible>> = {
  boostKPa: [-100, 500],
  lambda: [0.4, 6],
  fuelRailMPa: [0.1, 300],
  intakeTempC: [-40, 180],
};

/** The first channel that cannot be in the unit its column names; null where all can. */
export function channelInAnotherUnit(channels: ReducedRun["channels"]): RunRefusal | null {
  for (const channel of runChannels) {
    const seen = channels[channel];
    if (seen && isImplausible(seen, PLAUSIBLE[channel]))
      return {
        code: "channel-in-another-unit",
        channel,
        least: seen.least.value,
        greatest: seen.greatest.value,
      };
  }
  return null;
}

function isImplausible({ least, greatest }: ChannelExtremes, [low, high]: Plausible): boolean {
  return least.value < low || greatest.value > high;
}
