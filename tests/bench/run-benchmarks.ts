import { accelerationBenchmark } from "./acceleration.bench";
import { type Benchmark, type Measurement, measure } from "./benchmark";
import { buildSheetBenchmark } from "./build-sheet.bench";
import { catalogueProofBenchmark } from "./catalogue-proof.bench";
import { dynoLogBenchmark } from "./dyno-log.bench";
import { importMemory } from "./import-memory";
import { firstPlanBenchmark, promiseBenchmark, repairBenchmark } from "./planning.bench";
import {
  checkBenchmark,
  completeBenchmark,
  largeBenchmark,
  obstaclesBenchmark,
  packagesBenchmark,
  recheckBenchmark,
  solverStartBenchmark,
} from "./prerequisites.bench";
import { quoteTotalsBenchmark } from "./quote-totals.bench";
import { solverMemory } from "./solver-memory";

const benchmarks: readonly Benchmark[] = [
  quoteTotalsBenchmark,
  buildSheetBenchmark,
  accelerationBenchmark,
  dynoLogBenchmark,
  checkBenchmark,
  recheckBenchmark,
  completeBenchmark,
  packagesBenchmark,
  largeBenchmark,
  obstaclesBenchmark,
  catalogueProofBenchmark,
  solverStartBenchmark,
  firstPlanBenchmark,
  promiseBenchmark,
  repairBenchmark,
];

/** Runs those whose name contains the words given, all when none are, and prints the table. */
export async function runBenchmarks(words: string): Promise<number> {
  const chosen = benchmarks.filter(({ name }) => name.includes(words));
  if (chosen.length === 0) {
    console.error(
      `No benchmark is called "${words}". There are: ${benchmarks.map(({ name }) => name).join("; ")}.`,
    );
    return 2;
  }
  console.log(row("benchmark", "ours", "ms", "baseline", "ms", "ratio", "promised"));
  for (const benchmark of chosen) {
    const measured: Measurement = await measure(benchmark);
    const { ours, baseline } = benchmark;
    console.log(
      row(
        measured.name,
        ours.name,
        figure(measured.oursMs),
        baseline.name,
        figure(measured.baselineMs),
        `${figure(measured.ratio)} ×`,
        promised(benchmark, measured),
      ),
    );
  }
  if (chosen.includes(dynoLogBenchmark)) {
    const { peakMb } = importMemory();
    console.log(`\n${dynoLogBenchmark.name}: ${peakMb} MB at most, the process included; promised 200 MB.`);
  }
  if (chosen.includes(solverStartBenchmark)) {
    const { startMs, startedMb, largestMb } = solverMemory();
    console.log(
      `\nThe solver's worker answers ${startMs} ms after a cold start and takes ${startedMb} MB, ${largestMb} MB with 10,000 items.`,
    );
  }
  console.log(
    "\nMedian of the rounds, both sides in this process, turn and turn about. Compare ratios, not times.",
  );
  return 0;
}

function row(
  name: string,
  ours: string,
  oursMs: string,
  baseline: string,
  baselineMs: string,
  ratio: string,
  promise: string,
): string {
  return `${name.padEnd(26)} ${ours.padEnd(30)} ${oursMs.padStart(9)}  ${baseline.padEnd(20)} ${baselineMs.padStart(9)} ${ratio.padStart(9)}  ${promise}`;
}

/** The promise, and whether this run kept it; one of milliseconds is of the processor, which a busy machine shares. */
function promised({ limits }: Benchmark, { oursMs, oursProcessorMs, ratio }: Measurement): string {
  const { ms, ratio: most, waitMs } = limits ?? {};
  const verdict = (isKept: boolean) => (isKept ? "kept" : "missed");
  const time = ms && `≤ ${ms} ms of processor: ${figure(oursProcessorMs)}, ${verdict(oursProcessorMs <= ms)}`;
  const wait = waitMs && `answer within ${waitMs} ms: ${verdict(oursMs <= waitMs)}`;
  return [time, wait, most && `≤ ${most} ×: ${verdict(ratio <= most)}`].filter(Boolean).join("; ");
}

function figure(value: number): string {
  return value >= 1_000 ? value.toFixed(0) : value.toPrecision(3);
}
