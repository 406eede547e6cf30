import { type DynoLogRow, readDynoLog } from "@buildproof/documents";
import {
  exclusionWords,
  explainRunRefusal,
  explainRunWarning,
  type ReducedRun,
  type RunAccumulator,
  runAccumulator,
} from "@buildproof/engineering";
import type { IncomingFile } from "../core/file-store";
import { ok, type Result } from "../core/result";
import { refuse } from "./dyno-refusals";
import { DynoUpload, type ObservedRun } from "./dyno-upload";

export const LARGEST_LOG_BYTES = 150_000_000;
/** A session is a handful of runs; more than this is a column that numbers something else. */
const MOST_RUNS = 30;
/** A factor of one leaves the figures as they were observed. */
const AS_OBSERVED = { factor: 1 } as const;

export type DynoUploadSource = {
  readonly name: string;
  readonly stream: AsyncIterable<Uint8Array>;
};

/**
 * Reads a log as it streams in: each chunk goes to the file store and through the reduction, so that a
 * million rows take no more memory than one. Answers what is wrong at the first wrong line.
 */
export async function readUpload(
  { name, stream }: DynoUploadSource,
  incoming: IncomingFile,
): Promise<Result<DynoUpload>> {
  const runs = new Map<string, RunAccumulator>();
  const take = (row: DynoLogRow) => {
    const known = runs.get(row.run);
    const accumulator = known ?? runAccumulator(AS_OBSERVED);
    if (!known) runs.set(row.run, accumulator);
    accumulator.add(row);
  };
  const limits = { limitBytes: LARGEST_LOG_BYTES, limitRuns: MOST_RUNS };
  const read = await readDynoLog(copied(stream, incoming), take, limits);
  if (!read.ok) {
    const { code, sentence, row, column } = read.refusal;
    const refused = refuse("log-refused", { sentence, row, column });
    return code === "too-large"
      ? { ...refused, refusal: { ...refused.refusal, code: "log-too-large" } }
      : refused;
  }
  const observed = observedRuns(runs);
  if (!observed.ok) return observed;
  const { sha256, sizeBytes } = await incoming.seal();
  return ok(new DynoUpload(shortName(name), sha256, sizeBytes, read.rows, observed.value, incoming));
}

async function* copied(
  stream: AsyncIterable<Uint8Array>,
  incoming: IncomingFile,
): AsyncGenerator<Uint8Array> {
  for await (const chunk of stream) {
    await incoming.write(chunk);
    yield chunk;
  }
}

function observedRuns(runs: ReadonlyMap<string, RunAccumulator>): Result<readonly ObservedRun[]> {
  const observed: ObservedRun[] = [];
  for (const [label, accumulator] of runs) {
    const reduced = accumulator.finish();
    if (!reduced.ok)
      return refuse("run-refused", { run: label, sentence: explainRunRefusal(reduced.refusal) });
    observed.push(observedRun(observed.length + 1, label, reduced.value));
  }
  return ok(observed);
}

function observedRun(number: number, label: string, run: ReducedRun): ObservedRun {
  const { points, smoothingRpm, rampRpmPerS, rowsUsed, drive } = run;
  const warnings = [...run.warnings.map(explainRunWarning), ...leftOut(run)];
  return { number, label, points, smoothingRpm, rampRpmPerS, rowsUsed, drive, warnings };
}

/** Idle, soak and overrun are left out of every run; a faulty pick-up or an empty channel is worth a word. */
function leftOut({ excluded }: ReducedRun): readonly string[] {
  return (["speed-spike", "not-a-number"] as const)
    .filter((reason) => excluded[reason] > 0)
    .map((reason) => {
      const rows = excluded[reason];
      return `${rows} ${rows === 1 ? "row" : "rows"} left out: ${exclusionWords[reason]}.`;
    });
}

/** The name as the person knows the file, without folders of their device. */
function shortName(name: string): string {
  const last = name.split(/[\\/]/).at(-1)?.trim() ?? "";
  return last === "" ? "log.csv" : last.slice(-200);
}
