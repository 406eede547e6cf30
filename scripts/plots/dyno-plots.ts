import { type CorrectionQuestion, dynoCorrection, reduceRun } from "@buildproof/engineering";
import type { LinePlot } from "./line-plot";

export function correctionPlot(): LinePlot {
  const temperatures = Array.from({ length: 13 }, (_, at) => 10 + at * 2.5);
  const factor = (standard: CorrectionQuestion["standard"]) =>
    temperatures.map((airTempC) => {
      const air = { barometerKPa: 98, airTempC, relativeHumidityPct: 50 };
      const { factor } = dynoCorrection({ standard, ignition: "spark", aspiration: "natural", ...air });
      return [airTempC, factor] as const;
    });
  return {
    title: "Correction factor at 98 kPa and 50 % humidity",
    x: { label: "intake air, °C", ticks: [10, 15, 20, 25, 30, 35, 40] },
    y: { label: "factor", ticks: [0.98, 1, 1.02, 1.04, 1.06, 1.08, 1.1, 1.12, 1.14] },
    lines: [
      { label: "SAE J1349", points: factor("SAE_J1349") },
      { label: "UN R85", points: factor("UN_R85"), dash: "8 4" },
      { label: "DIN 70020", points: factor("DIN_70020"), dash: "2 4" },
      { label: "SAE J607", points: factor("SAE_J607"), dash: "12 4 2 4" },
    ],
  };
}

/** A made run: a smooth curve with a wiggle of 6 kW over it, as a pick-up and a driveline give. */
const madeRows = Array.from({ length: 2_501 }, (_, at) => {
  const engineRpm = 4_000 + at;
  const hubPowerKw = 260 - ((engineRpm - 5_400) / 170) ** 2 + 6 * Math.sin(engineRpm / 17);
  return { timeS: at / 400, engineRpm, hubPowerKw };
});

export function smoothingPlot(): LinePlot {
  const curve = (smoothingRpm: number) => {
    const reduced = reduceRun(madeRows, { factor: 1, smoothingRpm });
    if (!reduced.ok) throw new Error(reduced.refusal.code);
    return reduced.value.points.map(
      ({ engineRpm, observedPowerKw }) => [engineRpm, observedPowerKw] as const,
    );
  };
  return {
    title: "One run, smoothed by two widths",
    x: { label: "engine speed, rpm", ticks: [4_000, 4_500, 5_000, 5_500, 6_000, 6_500] },
    y: { label: "kW", ticks: [180, 200, 220, 240, 260, 280] },
    lines: [
      { label: "not smoothed", points: curve(0), dash: "1 3" },
      { label: "200 rpm", points: curve(200) },
      { label: "1,000 rpm", points: curve(1_000), dash: "8 4" },
    ],
  };
}
