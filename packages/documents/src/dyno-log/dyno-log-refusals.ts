import type { DynoLogRefusal } from "./dyno-log-row";

/** What can be wrong with a log, each in one sentence that says what to do next. */
export const dynoLogRefusals = {
  notText: (): DynoLogRefusal => ({
    code: "not-text",
    sentence: "This is not a text file: export the log as CSV in UTF-8 and choose that file.",
  }),
  empty: (): DynoLogRefusal => ({
    code: "no-header",
    sentence: "The file is empty: export the log again with its header line and choose that file.",
  }),
  noHeader: (): DynoLogRefusal => ({
    code: "no-header",
    row: 1,
    sentence:
      "The first line holds numbers where the column names belong: export the log with its header line, such as time_s, engine_rpm, hub_power_kw.",
  }),
  missingColumns: (missing: readonly string[]): DynoLogRefusal => ({
    code: "missing-columns",
    column: missing.join(", "),
    sentence: `The log has no column ${listed(missing)}: export it with ${missing.length === 1 ? "that column" : "those columns"}, named with the unit.`,
  }),
  doubledColumn: (column: string): DynoLogRefusal => ({
    code: "doubled-column",
    column,
    sentence: `The column ${column} stands in the header twice: leave one of them out and import again.`,
  }),
  wrongNumberOfFields: (row: number, found: number, expected: number): DynoLogRefusal => ({
    code: "wrong-number-of-fields",
    row,
    sentence: `Line ${row} has ${found} fields where the header has ${expected}: the file may be cut off; export the log again.`,
  }),
  notANumber: (row: number, column: string, text: string): DynoLogRefusal => ({
    code: "not-a-number",
    row,
    column,
    sentence:
      text.trim() === ""
        ? `Line ${row} has nothing in ${column}: correct the line or leave it out, then import again.`
        : `Line ${row} has "${shortened(text)}" in ${column} where a number belongs: correct the line or leave it out, then import again.`,
  }),
  notFinite: (row: number, column: string, text: string): DynoLogRefusal => ({
    code: "not-finite",
    row,
    column,
    sentence: `Line ${row} has "${shortened(text)}" in ${column}, which is no measured value: leave the line out and look at the sensor.`,
  }),
  unreadable: (row: number): DynoLogRefusal => ({
    code: "unreadable",
    row,
    sentence: `From line ${row} on a quotation mark is opened and not closed: correct the line or export the log again.`,
  }),
  noRows: (): DynoLogRefusal => ({
    code: "no-rows",
    sentence: "The log has a header but no rows: check that the run was recorded, then export it again.",
  }),
  tooManyRuns: (limit: number): DynoLogRefusal => ({
    code: "too-many-runs",
    column: "run",
    sentence: `The run column names more than ${limit} runs: check that it numbers the runs and not the rows.`,
  }),
  tooLarge: (limitBytes: number): DynoLogRefusal => ({
    code: "too-large",
    sentence: `The file is larger than ${Math.round(limitBytes / 1e6)} MB: export fewer runs at a time and import each file.`,
  }),
  timeGoesBackwards: (row: number, hasRunColumn: boolean): DynoLogRefusal => ({
    code: "time-goes-backwards",
    row,
    column: "time_s",
    sentence: hasRunColumn
      ? `Time goes backwards at line ${row} within one run: export the log again in order of time.`
      : `Time goes backwards at line ${row}: if the file holds several runs, export it with a run column that numbers them.`,
  }),
};

function listed(names: readonly string[]): string {
  if (names.length <= 1) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

function shortened(text: string): string {
  return text.length <= 30 ? text : `${text.slice(0, 30)}…`;
}
