import Papa from "papaparse";

/** No record of a log is longer than this; a quotation mark left open would otherwise swallow the file. */
const LONGEST_RECORD = 1_000_000;

export interface CsvBatch {
  readonly records: readonly (readonly string[])[];
  /** The record after these opens a quotation mark that does not close, or closes it in the middle of a field. */
  readonly brokenNext: boolean;
}

const nothingYet: CsvBatch = { records: [], brokenNext: false };

export interface CsvRecords {
  /** Whole records in the text so far; what is cut off waits for the next piece. */
  push(text: string): CsvBatch;
  end(): CsvBatch;
  /** Known after the first record. */
  delimiter(): string;
}

/**
 * Splits text that comes in pieces into the records of a CSV file. The delimiter is the one that the first
 * line has most of: comma, semicolon or tab.
 */
export function csvRecords(): CsvRecords {
  let waiting = "";
  let shape: { delimiter: string; newline: "\n" | "\r\n" | "\r" } | null = null;

  const parse = (text: string): CsvBatch => {
    shape ??= shapeOf(text);
    // The package's parser without the wrapper round it, whose batches outlive their use: a third of the time. It
    // answers what the wrapper answers; its type only says `any`.
    const { data, errors } = new Papa.Parser(shape).parse(text, 0, false) as Papa.ParseResult<string[]>;
    const broken = errors.find((error) => error.type === "Quotes");
    return broken === undefined
      ? { records: data, brokenNext: false }
      : { records: data.slice(0, broken.row), brokenNext: true };
  };

  const waitFurther = (): CsvBatch =>
    waiting.length > LONGEST_RECORD ? { records: [], brokenNext: true } : nothingYet;

  return {
    push(text) {
      waiting += text;
      shape ??= /[\r\n]./s.test(waiting) ? shapeOf(waiting) : null;
      if (shape === null) return waitFurther();
      const cut = endOfWholeRecords(waiting, shape.newline);
      if (cut === 0) return waitFurther();
      const whole = waiting.slice(0, cut - shape.newline.length);
      waiting = waiting.slice(cut);
      return parse(whole);
    },
    end() {
      const rest = waiting;
      waiting = "";
      return rest === "" ? nothingYet : parse(rest);
    },
    delimiter: () => shape?.delimiter ?? ",",
  };
}

function shapeOf(text: string): { delimiter: string; newline: "\n" | "\r\n" | "\r" } {
  const line = /^\s*([^\r\n]*)/.exec(text)?.[1] ?? "";
  const newline = text.includes("\r\n") ? "\r\n" : text.includes("\n") || !text.includes("\r") ? "\n" : "\r";
  const counts = [",", ";", "\t"].map((delimiter) => ({ delimiter, count: line.split(delimiter).length }));
  const most = counts.reduce((best, each) => (each.count > best.count ? each : best));
  return { delimiter: most.delimiter, newline };
}

/** Just past the last line end that is not inside quotation marks; 0 when there is none yet. */
function endOfWholeRecords(text: string, newline: string): number {
  const last = text.lastIndexOf(newline);
  if (last === -1) return 0;
  const cut = last + newline.length;
  return text.includes('"') && quotesBefore(text, cut) % 2 === 1 ? 0 : cut;
}

function quotesBefore(text: string, end: number): number {
  let count = 0;
  for (let at = text.indexOf('"'); at !== -1 && at < end; at = text.indexOf('"', at + 1)) count += 1;
  return count;
}
