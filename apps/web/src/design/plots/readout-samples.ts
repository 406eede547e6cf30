import { type PlotPoint, valueAt } from "./value-at";

/** One column of the read-out: a quantity, and what each run makes of it. */
export interface ReadoutQuantity {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
}

export interface ReadoutSample {
  readonly rpm: number;
  /** By run, then by quantity; null where the run has nothing at this speed. */
  readonly values: readonly (readonly (number | null)[])[];
}

const STEP_RPM = 50;

interface SamplesInput {
  readonly xDomain: readonly [number, number];
  /** By run, then by quantity. */
  readonly series: readonly (readonly (readonly PlotPoint[])[])[];
}

/** What the read-out line can stop at: every 50 rpm of the plot. */
export function readoutSamples({ xDomain, series }: SamplesInput): ReadoutSample[] {
  const samples: ReadoutSample[] = [];
  const first = Math.ceil(xDomain[0] / STEP_RPM) * STEP_RPM;
  for (let rpm = first; rpm <= xDomain[1]; rpm += STEP_RPM) {
    samples.push({ rpm, values: series.map((run) => run.map((points) => rounded(valueAt(points, rpm)))) });
  }
  return samples;
}

// Sent to the browser for every step: more digits than are ever shown only weigh.
function rounded(value: number | null): number | null {
  return value === null ? null : Math.round(value * 1000) / 1000;
}

/** The sample nearest to an engine speed. */
export function nearestSample(samples: readonly ReadoutSample[], rpm: number): number {
  let nearest = 0;
  samples.forEach((sample, index) => {
    const best = samples[nearest];
    if (best && Math.abs(sample.rpm - rpm) < Math.abs(best.rpm - rpm)) nearest = index;
  });
  return nearest;
}
