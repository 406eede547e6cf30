/** Something to time: a name, and one run of it. What it returns is kept, so that it cannot be optimised away. */
export type Contender = { readonly name: string; run(): unknown | Promise<unknown> };

/** A figure of ours against a named baseline that does no more than the same data demands. */
export type Benchmark = {
  readonly name: string;
  readonly ours: Contender;
  readonly baseline: Contender;
  /**
   * What is promised of ours: milliseconds of processor on the reference machine, a ratio to the baseline, or how long
   * whoever asks waits at most.
   */
  readonly limits?: { readonly ms?: number; readonly ratio?: number; readonly waitMs?: number };
  /** Fewer than usual where a single run takes a second. */
  readonly rounds?: number;
  /** One run a round, where each is about something else. */
  readonly isSingle?: boolean;
};

export type Measurement = {
  readonly name: string;
  readonly oursMs: number;
  /** Of the processor: what ours takes where nothing else wants it. */
  readonly oursProcessorMs: number;
  readonly baselineMs: number;
  /** Ours divided by the baseline. */
  readonly ratio: number;
  readonly rounds: number;
};

/** What either side takes at least before a round counts, so that the clock's grain does not. */
const ROUND_MS = 20;
const ROUNDS = 15;
/** A first run is many times slower than a warm one, and a busy machine gives it few. */
const WARM_UP_MS = 1_500;

/**
 * Times both in the same process, turn and turn about after a warm-up, and takes the median of the
 * rounds. Only the ratio carries over to another machine.
 */
export async function measure(benchmark: Benchmark): Promise<Measurement> {
  const { name, ours, baseline, rounds = ROUNDS, isSingle = false } = benchmark;
  const oursTimes = isSingle ? await warmUp(ours) : await repeats(ours);
  const baselineTimes = isSingle ? await warmUp(baseline) : await repeats(baseline);
  const samples: Record<"ours" | "processor" | "baseline", number[]> = {
    ours: [],
    processor: [],
    baseline: [],
  };
  for (let round = 0; round < rounds; round += 1) {
    const before = process.cpuUsage();
    samples.ours.push(await oneRound(ours, oursTimes));
    const { user, system } = process.cpuUsage(before);
    samples.processor.push((user + system) / 1_000 / oursTimes);
    samples.baseline.push(await oneRound(baseline, baselineTimes));
  }
  const oursMs = median(samples.ours);
  const oursProcessorMs = median(samples.processor);
  const baselineMs = median(samples.baseline);
  return { name, oursMs, oursProcessorMs, baselineMs, ratio: oursMs / baselineMs, rounds };
}

/** How often it has to run to fill a round, after it has run long enough to be compiled for speed. */
async function repeats(contender: Contender): Promise<number> {
  await warmUp(contender);
  for (let times = 1; ; times *= 2) {
    const begun = performance.now();
    await oneRound(contender, times);
    if (performance.now() - begun >= ROUND_MS) return times;
  }
}

/** Runs it until it has been compiled for speed; once is enough from then on. */
async function warmUp(contender: Contender): Promise<1> {
  for (const begun = performance.now(); performance.now() - begun < WARM_UP_MS; )
    await oneRound(contender, 1);
  return 1;
}

let sink: unknown;

/** Milliseconds of one run, averaged over `times` runs. */
async function oneRound(contender: Contender, times: number): Promise<number> {
  const begun = performance.now();
  for (let time = 0; time < times; time += 1) sink = await contender.run();
  const spent = performance.now() - begun;
  if (sink === undefined) throw new Error(`${contender.name} returned nothing`);
  return spent / times;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}
