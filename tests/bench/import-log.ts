import { readDynoLog } from "@buildproof/documents";
import { type RunAccumulator, runAccumulator } from "@buildproof/engineering";

/** A log as the dyno page takes it in: read, checked, reduced to a curve per run, corrected. Answers the points. */
export async function importLog(chunks: AsyncIterable<Uint8Array>): Promise<number> {
  const runs = new Map<string, RunAccumulator>();
  const result = await readDynoLog(chunks, (row) => {
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
  if (points === 0) throw new Error("the log gave no curve");
  return points;
}
