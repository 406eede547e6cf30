import type { ChannelStrip, CurveRun, ForecastBand } from "@/design/plots/curve-types";

/** Invented curves of an invented engine, smooth enough to judge a drawing by. */
function torqueAt(rpm: number, peakNm: number, peakRpm: number): number {
  const away = (rpm - peakRpm) / 3600;
  return peakNm * (1 - (away > 0 ? 1.25 : 0.32) * away * away - 0.06 * away ** 3);
}

function run(id: string, label: string, peakNm: number, peakRpm: number): CurveRun {
  const points = [];
  for (let engineRpm = 1800; engineRpm <= 6200; engineRpm += 50) {
    const torqueNm = torqueAt(engineRpm, peakNm, peakRpm);
    points.push({ engineRpm, torqueNm, powerKw: (torqueNm * engineRpm * Math.PI) / 30_000 });
  }
  return { id, label, points };
}

export const sampleRuns: readonly CurveRun[] = [
  run("baseline", "Baseline", 462, 4200),
  run("step", "Calibrated", 548, 4300),
  run("proof", "Proof", 640, 4400),
];

export const sampleBands: readonly ForecastBand[] = [
  {
    label: "Forecast",
    quantity: "power",
    points: run("forecast", "", 625, 4400).points.map(({ engineRpm, powerKw }) => ({
      engineRpm,
      low: powerKw * 0.945,
      high: powerKw * 1.055,
    })),
  },
];

export const sampleStrips: readonly ChannelStrip[] = [
  {
    id: "boost",
    title: "Boost",
    unit: "kPa",
    decimals: 0,
    series: [
      {
        runId: "proof",
        points: (sampleRuns[2]?.points ?? []).map(({ engineRpm }) => ({
          engineRpm,
          value: 66 * (1 - Math.exp(-(engineRpm - 1500) / 900)),
        })),
      },
    ],
  },
  {
    id: "rail",
    title: "Fuel rail pressure",
    unit: "MPa",
    decimals: 1,
    limits: [{ label: "not below 14 MPa", value: 14 }],
    series: [
      {
        runId: "baseline",
        points: (sampleRuns[0]?.points ?? []).map(({ engineRpm }) => ({ engineRpm, value: 19.2 })),
      },
      {
        runId: "proof",
        points: (sampleRuns[2]?.points ?? []).map(({ engineRpm }) => ({
          engineRpm,
          value: 19 - 3.4 / (1 + Math.exp((5300 - engineRpm) / 260)),
        })),
      },
    ],
  },
];
