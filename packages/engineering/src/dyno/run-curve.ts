import { kilowatts, revolutionsPerMinute, torqueFromPower } from "@buildproof/units";
import type { ChannelExtremes, Peak, RunPoint } from "./reduced-run";
import { type EvenSeries, movingAverage, resample, valueAt } from "./resample";
import type { RunChannel } from "./run-row";
import { BIN_RPM, type Knot } from "./sweep-bins";

export type CurveSettings = {
  readonly factor: number;
  readonly smoothingRpm: number;
  readonly gridRpm: number;
};

export type Gap = { readonly fromRpm: number; readonly toRpm: number };

/** Interpolating over more than this would invent part of the curve. */
const WIDEST_BRIDGE_RPM = 200;

export function gapsIn(knots: readonly Knot[]): readonly Gap[] {
  return knots.flatMap((knot, index) => {
    const next = knots[index + 1];
    if (!next || next.engineRpm - knot.engineRpm <= WIDEST_BRIDGE_RPM) return [];
    return [{ fromRpm: knot.engineRpm, toRpm: next.engineRpm }];
  });
}

/** Points on whole multiples of the grid, without those inside a gap. */
export function runPoints(
  knots: readonly Knot[],
  gaps: readonly Gap[],
  { factor, smoothingRpm, gridRpm }: CurveSettings,
): readonly RunPoint[] {
  const smoothed = (samples: Parameters<typeof resample>[0]) =>
    movingAverage(resample(samples, BIN_RPM), smoothingRpm);
  const power = smoothed(knots.map(({ engineRpm, powerKw }) => ({ engineRpm, value: powerKw })));
  const channel = (name: RunChannel) => smoothed(channelSamples(knots, name));
  const channels = {
    boostKPa: channel("boostKPa"),
    lambda: channel("lambda"),
    fuelRailMPa: channel("fuelRailMPa"),
    intakeTempC: channel("intakeTempC"),
  };
  return gridSpeeds(power, gridRpm)
    .filter((rpm) => !gaps.some(({ fromRpm, toRpm }) => rpm > fromRpm && rpm < toRpm))
    .map((engineRpm) => {
      const observedPowerKw = valueAt(power, engineRpm) ?? 0;
      const observedTorqueNm = torqueFromPower(kilowatts(observedPowerKw), revolutionsPerMinute(engineRpm));
      return {
        engineRpm,
        observedPowerKw,
        observedTorqueNm,
        correctedPowerKw: observedPowerKw * factor,
        correctedTorqueNm: observedTorqueNm * factor,
        boostKPa: valueAt(channels.boostKPa, engineRpm),
        lambda: valueAt(channels.lambda, engineRpm),
        fuelRailMPa: valueAt(channels.fuelRailMPa, engineRpm),
        intakeTempC: valueAt(channels.intakeTempC, engineRpm),
      };
    });
}

/** The highest of one measure over the points. */
export function peakOf<Point extends { readonly engineRpm: number }>(
  points: readonly Point[],
  measure: (point: Point) => number,
): Peak {
  return points.reduce<Peak>(
    (peak, point) =>
      measure(point) > peak.value ? { engineRpm: point.engineRpm, value: measure(point) } : peak,
    { engineRpm: 0, value: Number.NEGATIVE_INFINITY },
  );
}

/** Least and greatest of a channel over 10 rpm means, before smoothing: a short dip in fuel pressure counts. */
export function channelExtremes(knots: readonly Knot[], channel: RunChannel): ChannelExtremes | null {
  const samples = channelSamples(knots, channel);
  if (samples.length === 0) return null;
  const greatest = peakOf(samples, ({ value }) => value);
  const least = peakOf(samples, ({ value }) => -value);
  return { least: { engineRpm: least.engineRpm, value: -least.value }, greatest };
}

function channelSamples(knots: readonly Knot[], channel: RunChannel) {
  return knots.flatMap((knot) => {
    const value = knot[channel];
    return value === null ? [] : [{ engineRpm: knot.engineRpm, value }];
  });
}

function gridSpeeds({ firstRpm, stepRpm, values }: EvenSeries, gridRpm: number): readonly number[] {
  const first = Math.max(1, Math.ceil(firstRpm / gridRpm));
  const last = Math.floor((firstRpm + (values.length - 1) * stepRpm) / gridRpm);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * gridRpm);
}
