import type { Curve, Forecasted } from "@buildproof/workshop";
import type { CurveRange, CurveRun, ForecastBand } from "@/design/plots/curve-types";

/** The baseline, the hot day and the forecast as lines of one overlay. */
export function forecastRuns(forecast: Forecasted): readonly CurveRun[] {
  const { points, hotDay, baseline } = forecast;
  return [
    {
      id: "baseline",
      label: baseline.source === "measured" ? "Baseline" : "Rated",
      points: points.map(({ speedRpm, baselineKw, baselineNm }) => ({
        engineRpm: speedRpm,
        powerKw: baselineKw,
        torqueNm: baselineNm,
      })),
    },
    expectedRun("hot-day", `At ${hotDay.tempC} °C`, hotDay),
    expectedRun("forecast", "Forecast", forecast),
  ];
}

function expectedRun(id: string, label: string, { points }: Curve): CurveRun {
  return {
    id,
    label,
    points: points.map(({ speedRpm, powerKw, torqueNm }) => ({
      engineRpm: speedRpm,
      powerKw: powerKw.expected,
      torqueNm: torqueNm.expected,
    })),
    range: points.map(
      ({ speedRpm, powerKw, torqueNm }): CurveRange => ({ engineRpm: speedRpm, powerKw, torqueNm }),
    ),
  };
}

/** The band of the forecast in both panels. */
export function forecastBands({ points }: Curve): readonly ForecastBand[] {
  const band = (quantity: "power" | "torque", of: "powerKw" | "torqueNm"): ForecastBand => ({
    label: "Low to high",
    quantity,
    points: points.map((point) => ({
      engineRpm: point.speedRpm,
      low: point[of].low,
      high: point[of].high,
    })),
  });
  return [band("power", "powerKw"), band("torque", "torqueNm")];
}
