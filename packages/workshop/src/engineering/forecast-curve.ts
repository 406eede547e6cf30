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
  const { speedRpm, lowKw, expectedKw, highKw, baselineKw, boostKPa, manifoldTempC } = point;
  const nm = (powerKw: number) => shown(newtonMetresAt(powerKw, speedRpm));
  return {
    speedRpm,
    powerKw: { low: shown(lowKw), expected: shown(expectedKw), high: shown(highKw) },
    torqueNm: { low: nm(lowKw), expected: nm(expectedKw), high: nm(highKw) },
    baselineKw: shown(baselineKw),
    baselineNm: nm(baselineKw),
    boostKPa: boostKPa === null ? null : shown(boostKPa),
    chargeC: manifoldTempC === null ? null : shown(manifoldTempC),
    crankNm: shown(point.crankTorqueNm),
  };
}

/** A curve goes to the browser at every choice: more digits than a dyno has only weigh. */
function shown(value: number): number {
  return Number(value.toFixed(2));
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
