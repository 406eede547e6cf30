import type { BlowerQuestion } from "../air/blower-question";
import { sampleBlower, sampleDisplacement } from "../air/sample-blower";
import type { HighPressurePump } from "../fuel/fuel-stage";
import type { ForecastPoint, ForecastQuestion } from "./forecast-question";
import { powerForecast } from "./power-forecast";

/** The invented demo wagon's baseline at the hubs with the larger blower: figures of common practice, no published source. */
export const sampleForecast: ForecastQuestion = {
  baseline: {
    at: "hubs",
    points: [
      { speedRpm: 600, powerKw: 12 },
      { speedRpm: 2_000, powerKw: 90 },
      { speedRpm: 3_000, powerKw: 150 },
      { speedRpm: 4_000, powerKw: 205 },
      { speedRpm: 5_000, powerKw: 245 },
      { speedRpm: 6_500, powerKw: 261 },
    ],
  },
  compressionRatio: 11,
  fuel: "petrol",
  injection: "direct",
  blower: sampleBlower,
};

/** The invented turbo-diesel ute on a towing calibration. */
export const sampleCalibration: ForecastQuestion = {
  baseline: {
    at: "hubs",
    points: [
      { speedRpm: 1_500, powerKw: 55 },
      { speedRpm: 2_500, powerKw: 108 },
      { speedRpm: 3_500, powerKw: 120 },
    ],
  },
  compressionRatio: 16.5,
  fuel: "diesel",
  injection: "direct",
  calibrationChange: { torqueRequestNm: 560, smokeLambda: 1.2, exhaustLimitC: 720 },
};

/** Its standard pump: three strokes of 0.393 cm³ per turn of the cam. */
export const samplePump: HighPressurePump = {
  kind: "high-pressure-pump",
  displacementCm3PerCamRev: 1.179,
  volumetricEfficiency: [
    { speedRpm: 3_000, value: 0.9 },
    { speedRpm: 6_000, value: 0.845 },
  ],
};

/** The forecast at one speed. */
export function forecastAt(question: ForecastQuestion, speedRpm: number): ForecastPoint {
  const { blower: build = sampleBlower } = question;
  const [point] = powerForecast({ ...question, blower: { ...build, speedsRpm: [speedRpm] } }).points;
  if (!point) throw new Error("One speed gives one point.");
  return point;
}

/** The sample's blower of another size on another pulley. */
export function samplePulley(blowerPulleyMm: number, displacementLPerRev: number): BlowerQuestion {
  return {
    ...sampleBlower,
    blower: { ...sampleDisplacement, displacementLPerRev },
    drive: { ...sampleBlower.drive, blowerPulleyMm },
  };
}
