import type { Forecast, ForecastPoint } from "@buildproof/engineering";
import { newtonMetresAt } from "./torque-at";

/** A figure that is forecast: never without its band. */
export type Banded = { readonly low: number; readonly expected: number; readonly high: number };

/** One speed of the forecast; powers at the hubs, torque referred to engine speed, as the dyno shows it. */
export type CurvePoint = {
  readonly speedRpm: number;
  readonly powerKw: Banded;
  readonly torqueNm: Banded;
  readonly baselineKw: number;
  readonly baselineNm: number;
  readonly boostKPa: number | null;
  readonly chargeC: number | null;
  readonly crankNm: number;
};

export type CurvePeak = Banded & { readonly speedRpm: number };
export type Curve = {
  readonly points: readonly CurvePoint[];
  readonly power: CurvePeak;
  readonly torque: CurvePeak;
};

export function forecastCurve({ points }: Pick<Forecast, "points">): Curve {
  const shown = points.map(curvePoint);
  return {
    points: shown,
    power: peakOf(shown, ({ powerKw }) => powerKw),
    torque: peakOf(shown, ({ torqueNm }) => torqueNm),
  };
}

function curvePoint(point: ForecastPoint): CurvePoint {
  const { speedRpm, lowKw, expectedKw, highKw, baselineKw } = point;
  return {
    speedRpm,
    powerKw: { low: lowKw, expected: expectedKw, high: highKw },
    torqueNm: {
      low: newtonMetresAt(lowKw, speedRpm),
      expected: newtonMetresAt(expectedKw, speedRpm),
      high: newtonMetresAt(highKw, speedRpm),
    },
    baselineKw,
    baselineNm: newtonMetresAt(baselineKw, speedRpm),
    boostKPa: point.boostKPa,
    chargeC: point.manifoldTempC,
    crankNm: point.crankTorqueNm,
  };
}

function peakOf(points: readonly CurvePoint[], measure: (point: CurvePoint) => Banded): CurvePeak {
  const [first, ...rest] = points;
  if (!first) throw new RangeError("A curve has points.");
  const best = rest.reduce(
    (most, each) => (measure(each).expected > measure(most).expected ? each : most),
    first,
  );
  return { ...measure(best), speedRpm: best.speedRpm };
}
