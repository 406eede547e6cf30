import type { BlowerQuestion, DisplacementBlower } from "./blower-question";

const SPEEDS = Array.from({ length: 60 }, (_, at) => 600 + at * 100);

export const sampleDisplacement: DisplacementBlower = {
  kind: "displacement",
  displacementLPerRev: 2.4,
  volumetricEfficiency: 0.92,
  adiabaticEfficiency: 0.64,
  maxSpeedRpm: 14_000,
};

/** The same with an efficiency that rises with engine speed. */
export const curvedDisplacement: DisplacementBlower = {
  ...sampleDisplacement,
  volumetricEfficiency: [
    { speedRpm: 3_000, value: 0.88 },
    { speedRpm: 6_000, value: 0.92 },
  ],
};

/** The same with clearances that leak instead of an efficiency that includes it. */
export const leakyDisplacement: DisplacementBlower = {
  ...sampleDisplacement,
  volumetricEfficiency: 0.98,
  leakageAreaMm2: 100,
};

/** The invented demo engine with the larger blower: figures of common practice, no published source. */
export const sampleBlower: BlowerQuestion = {
  engine: { displacementL: 5.7, volumetricEfficiency: 0.98, maxSpeedRpm: 6_500 },
  blower: sampleDisplacement,
  drive: { crankPulleyMm: 175, blowerPulleyMm: 92, internalRatio: 1 },
  ambient: { pressureKPa: 100, tempC: 25 },
  chargeCooler: { effectiveness: 0.72, coolantTempC: 45, pressureDropKPa: 5 },
  inletDropKPa: 3,
  speedsRpm: SPEEDS,
};
