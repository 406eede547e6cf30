import type { SessionView, ViewPoint } from "@buildproof/workshop";
import type { ChannelStrip, CurveRun, LinePattern } from "@/design/plots/curve-types";
import type { Figures } from "./asked-view";
import { limitSentence } from "./limit-words";

/** One line of the overlay, with its channels. */
export type OverlayLine = {
  readonly id: string;
  readonly label: string;
  readonly pattern?: LinePattern;
  readonly points: readonly ViewPoint[];
};

export function curveRuns(lines: readonly OverlayLine[], figures: Figures): readonly CurveRun[] {
  return lines.map(({ id, label, pattern, points }) => ({
    id,
    label,
    ...(pattern ? { pattern } : {}),
    points: points.map((point) => ({
      engineRpm: point.engineRpm,
      powerKw: figures === "corrected" ? point.correctedPowerKw : point.observedPowerKw,
      torqueNm: figures === "corrected" ? point.correctedTorqueNm : point.observedTorqueNm,
    })),
  }));
}

const channels = [
  { id: "boostKPa", title: "Boost", unit: "kPa", decimals: 0 },
  { id: "lambda", title: "Mixture", unit: "lambda", decimals: 2 },
  { id: "fuelRailMPa", title: "Fuel rail pressure", unit: "MPa", decimals: 1 },
  { id: "intakeTempC", title: "Intake air", unit: "°C", decimals: 0 },
] as const;

/** Under this it is the breathing of a natural engine: a strip of noise. */
export const LEAST_BOOST_KPA = 10;

/** A strip for each channel that any of the lines carries, with the limits that hold for the newest of them. */
export function channelStrips(
  lines: readonly OverlayLine[],
  readings: SessionView["readings"],
): readonly ChannelStrip[] {
  return channels.flatMap(({ id, ...channel }) => {
    const series = lines.map((line) => ({
      runId: line.id,
      points: line.points.flatMap(({ engineRpm, [id]: value }) =>
        value === null ? [] : [{ engineRpm, value }],
      ),
    }));
    if (
      !series.some(({ points }) => points.some(({ value }) => id !== "boostKPa" || value > LEAST_BOOST_KPA))
    )
      return [];
    const limits = readings
      .filter(({ limit }) => limit.channel === id)
      .map(({ limit }) => ({ label: limitSentence(limit), value: limit.stop }));
    return [{ id, ...channel, series, limits }];
  });
}
