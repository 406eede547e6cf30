import { type AccelerationQuestion, acceleration } from "@buildproof/engineering";
import { sampleWagon } from "@buildproof/engineering/samples";
import type { Benchmark } from "./benchmark";

const wagon: AccelerationQuestion = {
  ...sampleWagon,
  curve: Array.from({ length: 60 }, (_, at) => {
    const speedRpm = 1000 + at * 85;
    return { speedRpm, powerKw: 330 * Math.sin((Math.PI / 2) * Math.min(1, speedRpm / 5700)) ** 1.3 };
  }),
  targetsKmh: [80, 100, 120],
  distancesM: [400],
  rollOutM: 0.3048,
};

/** A full run with shifts, grip and every moment located, against as many plain Euler steps of one force. */
export const accelerationBenchmark: Benchmark = {
  name: "acceleration, 400 m",
  ours: { name: "acceleration", run: () => acceleration(wagon) },
  baseline: { name: "plain Euler, 1 ms", run: plainEuler },
};

function plainEuler(): number {
  const drag = 0.5 * wagon.airDensityKgPerM3 * wagon.dragAreaM2;
  const rolling = wagon.rollingCoefficient * wagon.massKg * 9.80665;
  const grip = wagon.gripCoefficient * wagon.massKg * 9.80665;
  let [s, ms, m] = [0, 0, 0];
  while (m < 400) {
    const push = Math.min(grip, (330_000 * wagon.drivelineEfficiency) / Math.max(ms, 0.1));
    ms += ((push - rolling - drag * ms * ms) / (wagon.massKg * wagon.rotatingFactor)) * 0.001;
    m += ms * 0.001;
    s += 0.001;
  }
  return s;
}
