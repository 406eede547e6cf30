import { readFileSync } from "node:fs";
import path from "node:path";
import { readDynoLog } from "@buildproof/documents";
import { type RunAccumulator, runAccumulator } from "@buildproof/engineering";
import Papa from "papaparse";
import type { Benchmark } from "./benchmark";

const file = path.join(import.meta.dirname, "..", "..", "shared", "demo-logs", "ridgewold-proof.csv");
const bytes = readFileSync(file);
const text = bytes.toString("utf8");
const CHUNK_BYTES = 65_536;

/** The shipped proof log, from bytes to corrected curves, against splitting the same text into fields and stopping there. */
export const dynoLogBenchmark: Benchmark = {
  name: `dyno log, ${text.split("\n").length - 2} rows`,
  ours: { name: "read, check, reduce, correct", run: importLog },
  baseline: { name: "split into fields", run: () => Papa.parse(text).data.length },
};

async function importLog(): Promise<number> {
  const runs = new Map<string, RunAccumulator>();
  const result = await readDynoLog(chunks(), (row) => {
    let run = runs.get(row.run);
    if (!run) {
      run = runAccumulator({ factor: 1.02 });
      runs.set(row.run, run);
    }
    run.add(row);
  });
  if (!result.ok) throw new Error(result.refusal.sentence);
  let points = 0;
  for (const run of runs.values()) {
    const reduced = run.finish();
    if (reduced.ok) points += reduced.value.points.length;
  }
  if (points === 0) throw new Error("the shipped log gave no curve");
  return points;
}

async function* chunks(): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += CHUNK_BYTES) yield bytes.subarray(at, at + CHUNK_BYTES);
}
