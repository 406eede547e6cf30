import type { CurveRun } from "./curve-types";

export interface ReadoutRow {
  readonly id: string;
  readonly label: string;
  readonly points: CurveRun["points"];
}

/** The lines of the read-out: one a run, and of a forecast its lower and upper end too. */
export function readoutRows(runs: readonly CurveRun[]): readonly ReadoutRow[] {
  return runs.flatMap(({ id, label, points, range }): readonly ReadoutRow[] => {
    if (!range) return [{ id, label, points }];
    const end = (which: "low" | "high"): ReadoutRow => ({
      id: `${id} ${which}`,
      label: `${label}, ${which}`,
      points: range.map(({ engineRpm, powerKw, torqueNm }) => ({
        engineRpm,
        powerKw: powerKw[which],
        torqueNm: torqueNm[which],
      })),
    });
    return [end("low"), { id, label: `${label}, expected`, points }, end("high")];
  });
}
