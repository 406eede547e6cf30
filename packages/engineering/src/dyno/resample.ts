/** A value at an engine speed. */
export type Sample = { readonly engineRpm: number; readonly value: number };

/** Values at equal steps of engine speed: value i belongs to firstRpm + i·stepRpm. */
export type EvenSeries = {
  readonly firstRpm: number;
  readonly stepRpm: number;
  readonly values: Float64Array;
};

/** Linear interpolation onto whole multiples of the step inside the samples. Samples rise in speed. */
export function resample(samples: readonly Sample[], stepRpm: number): EvenSeries {
  const first = samples.at(0);
  const last = samples.at(-1);
  if (!first || !last) return { firstRpm: 0, stepRpm, values: new Float64Array() };
  const firstStep = Math.ceil(first.engineRpm / stepRpm);
  const lastStep = Math.floor(last.engineRpm / stepRpm);
  const values = new Float64Array(Math.max(0, lastStep - firstStep + 1));
  let left = 0;
  for (let index = 0; index < values.length; index += 1) {
    const rpm = (firstStep + index) * stepRpm;
    while (left < samples.length - 2 && (samples[left + 1]?.engineRpm ?? rpm) < rpm) left += 1;
    values[index] = between(samples[left] ?? first, samples[left + 1] ?? last, rpm);
  }
  return { firstRpm: firstStep * stepRpm, stepRpm, values };
}

function between(a: Sample, b: Sample, rpm: number): number {
  if (b.engineRpm === a.engineRpm) return a.value;
  return a.value + ((b.value - a.value) * (rpm - a.engineRpm)) / (b.engineRpm - a.engineRpm);
}

/**
 * Moving average of a stated width in rpm. Near the ends the window shrinks on both sides alike, so a
 * straight line stays where it is. An average cannot raise the peak.
 */
export function movingAverage(series: EvenSeries, widthRpm: number): EvenSeries {
  const { values, stepRpm } = series;
  const reach = Math.floor(widthRpm / 2 / stepRpm);
  const runningSum = new Float64Array(values.length + 1);
  values.forEach((value, index) => {
    runningSum[index + 1] = (runningSum[index] ?? 0) + value;
  });
  const smoothed = values.map((_, index) => {
    const half = Math.min(reach, index, values.length - 1 - index);
    const sum = (runningSum[index + half + 1] ?? 0) - (runningSum[index - half] ?? 0);
    return sum / (2 * half + 1);
  });
  return { ...series, values: smoothed };
}

/** The value at a speed that is a multiple of the step; null outside the series. */
export function valueAt({ firstRpm, stepRpm, values }: EvenSeries, engineRpm: number): number | null {
  return values[Math.round((engineRpm - firstRpm) / stepRpm)] ?? null;
}
