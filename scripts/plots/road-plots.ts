import { type AccelerationQuestion, acceleration, speedometer } from "@buildproof/engineering";
import { sampleWagon } from "@buildproof/engineering/samples";
import type { LinePlot } from "./line-plot";

const wagon: AccelerationQuestion = { ...sampleWagon, targetsKmh: [140], distancesM: [] };

export function accelerationPlot(): LinePlot {
  const run = (change: Partial<AccelerationQuestion>) =>
    acceleration({ ...wagon, ...change }, { stepS: 0.02, traceS: 0.2 })
      .trace.filter(({ s }) => s <= 14)
      .map(({ s, kmh }) => [s, kmh] as const);
  return {
    title: "Speed from rest",
    x: { label: "time from rest, s", ticks: [0, 2, 4, 6, 8, 10, 12, 14] },
    y: { label: "km/h", ticks: [0, 20, 40, 60, 80, 100, 120, 140] },
    lines: [
      { label: "as it is", points: run({}) },
      { label: "500 kg more", points: run({ massKg: 3200 }), dash: "8 4" },
      { label: "grip 0.3", points: run({ gripCoefficient: 0.3 }), dash: "2 4" },
    ],
  };
}

export function speedometerPlot(): LinePlot {
  const speeds = Array.from({ length: 13 }, (_, at) => 10 + at * 10);
  const over = (fittedTyre: string) =>
    speeds.map((indicatedKmh) => {
      const { trueKmh } = speedometer({
        indicatedKmh,
        standardTyre: "265/70R17",
        fittedTyre,
        standardErrorPct: 3,
      });
      return [trueKmh, indicatedKmh - trueKmh] as const;
    });
  return {
    title: "Speedometer reading above the true speed",
    x: { label: "true speed, km/h", ticks: [0, 20, 40, 60, 80, 100, 120, 140] },
    y: { label: "km/h over", ticks: [-4, 0, 4, 8, 12, 16, 20] },
    lines: [
      { label: "limit", points: [0, 140].map((kmh) => [kmh, 0.1 * kmh + 4] as const), dash: "8 4" },
      { label: "265/70R17", points: over("265/70R17") },
      { label: "285/70R17", points: over("285/70R17"), dash: "2 4" },
    ],
  };
}
