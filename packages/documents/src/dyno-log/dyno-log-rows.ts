import type { CsvBatch } from "./csv-records";
import { type DynoLogHeader, dynoLogHeader } from "./dyno-log-header";
import { dynoLogRefusals } from "./dyno-log-refusals";
import type { DynoLogRefusal, DynoLogResult, DynoLogRow } from "./dyno-log-row";
import { readDecimal } from "./read-decimal";

interface RunSoFar {
  rows: number;
  lastTimeS: number;
}

/** Filled channel by channel, then handed out as a `DynoLogRow`. */
type RowInMaking = { -readonly [K in keyof DynoLogRow]: DynoLogRow[K] };

const isBlank = (fields: readonly string[]) =>
  fields.length === 0 || (fields.length === 1 && fields[0]?.trim() === "");

/** Turns records into rows, and remembers of each run only its length and last time. */
export function dynoLogRows(delimiter: () => string, onRow: (row: DynoLogRow) => void, limitRuns: number) {
  let header: DynoLogHeader | null = null;
  let line = 0;
  const runs = new Map<string, RunSoFar>();

  const takeHeader = (fields: readonly string[]): DynoLogRefusal | null => {
    const found = dynoLogHeader(fields);
    if ("code" in found) return found;
    header = found;
    return null;
  };

  const takeRow = (fields: readonly string[], shape: DynoLogHeader): DynoLogRefusal | null => {
    if (fields.length !== shape.width)
      return dynoLogRefusals.wrongNumberOfFields(line, fields.length, shape.width);
    const row = rowOf(fields, shape, line, delimiter() !== ",");
    if ("code" in row) return row;
    const refusal = placeInRun(runs, row, line, shape, limitRuns);
    if (refusal === null) onRow(row);
    return refusal;
  };

  return {
    take(batch: CsvBatch): DynoLogRefusal | null {
      for (const fields of batch.records) {
        line += 1;
        if (isBlank(fields)) continue;
        const refusal = header === null ? takeHeader(fields) : takeRow(fields, header);
        if (refusal !== null) return refusal;
      }
      return batch.brokenNext ? dynoLogRefusals.unreadable(line + 1) : null;
    },
    finish(): DynoLogResult {
      if (header === null) return { ok: false, refusal: dynoLogRefusals.empty() };
      const summaries = [...runs].map(([run, { rows }]) => ({ run, rows }));
      const rows = summaries.reduce((sum, each) => sum + each.rows, 0);
      if (rows === 0) return { ok: false, refusal: dynoLogRefusals.noRows() };
      return { ok: true, rows, runs: summaries, columns: header.columns.map(({ heading }) => heading) };
    },
  };
}

function rowOf(
  fields: readonly string[],
  { columns, runIndex }: DynoLogHeader,
  line: number,
  decimalComma: boolean,
): DynoLogRow | DynoLogRefusal {
  const row: RowInMaking = {
    run: runIndex === null ? "1" : (fields[runIndex]?.trim() ?? ""),
    timeS: 0,
    engineRpm: 0,
  };
  if (row.run === "") return dynoLogRefusals.notANumber(line, "run", "");
  for (const column of columns) {
    const text = fields[column.index] ?? "";
    // A slower channel leaves its field empty between its own samples.
    if (text === "" && !column.required) continue;
    const value = readDecimal(text, decimalComma);
    if (value === "text") return dynoLogRefusals.notANumber(line, column.heading, text);
    if (value === "not-finite") return dynoLogRefusals.notFinite(line, column.heading, text);
    row[column.channel] = column.toOurUnit(value);
  }
  return row;
}

function placeInRun(
  runs: Map<string, RunSoFar>,
  row: DynoLogRow,
  line: number,
  { runIndex }: DynoLogHeader,
  limitRuns: number,
): DynoLogRefusal | null {
  const run = runs.get(row.run);
  if (run === undefined) {
    if (runs.size === limitRuns) return dynoLogRefusals.tooManyRuns(limitRuns);
    runs.set(row.run, { rows: 1, lastTimeS: row.timeS });
    return null;
  }
  if (row.timeS < run.lastTimeS) return dynoLogRefusals.timeGoesBackwards(line, runIndex !== null);
  run.rows += 1;
  run.lastTimeS = row.timeS;
  return null;
}
