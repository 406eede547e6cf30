import type { AccelerationQuestion } from "./acceleration-question";

/** The invented demo wagon as it leaves the showroom; typical ratios, masses and drag, from memory. */
export const sampleWagon: AccelerationQuestion = {
  massKg: 2700,
  rotatingFactor: 1.08,
  tyre: "275/60R20",
  gears: [4.9, 3.1, 1.98, 1.37, 1, 0.87, 0.78],
  finalDrive: 3.36,
  shiftTimeS: 0.2,
  drivelineEfficiency: 0.86,
  rollingCoefficient: 0.013,
  dragAreaM2: 1.2,
  airDensityKgPerM3: 1.18,
  slopePct: 0,
  drivenAxles: "all",
  gripCoefficient: 0.85,
  curve: [
    { speedRpm: 1000, powerKw: 38 },
    { speedRpm: 2000, powerKw: 90 },
    { speedRpm: 3500, powerKw: 185 },
    { speedRpm: 4500, powerKw: 255 },
    { speedRpm: 5500, powerKw: 295 },
    { speedRpm: 6000, powerKw: 285 },
  ],
  targetsKmh: [60, 100],
  distancesM: [100, 400],
};
