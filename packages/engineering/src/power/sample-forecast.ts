import { sampleBlower } from "../air/sample-blower";
import type { ForecastQuestion } from "./forecast-question";

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
