import { csvRecords } from "./csv-records";
import { dynoLogRefusals } from "./dyno-log-refusals";
import type { DynoLogRefusal, DynoLogResult, DynoLogRow } from "./dyno-log-row";
import { dynoLogRows } from "./dyno-log-rows";
import { utf8Text } from "./utf8-text";

export interface DynoLogOptions {
  readonly limitBytes?: number;
  readonly limitRuns?: number;
}

/**
 * Reads a dyno log as it streams in: comma, semicolon or tab between fields, point or decimal comma, with or
 * without a byte-order mark; one million rows take no more memory than one. `onRow` is called for each row in
 * order. Rows seen before a refusal are to be thrown away with it.
 */
export async function readDynoLog(
  stream: AsyncIterable<Uint8Array>,
  onRow: (row: DynoLogRow) => void,
  { limitBytes = 150_000_000, limitRuns = 100 }: DynoLogOptions = {},
): Promise<DynoLogResult> {
  const decoder = utf8Text();
  const records = csvRecords();
  const rows = dynoLogRows(records.delimiter, onRow, limitRuns);
  const refused = (refusal: DynoLogRefusal): DynoLogResult => ({ ok: false, refusal });
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.byteLength;
    if (bytes > limitBytes) return refused(dynoLogRefusals.tooLarge(limitBytes));
    const text = chunk.includes(0) ? null : decoder.push(chunk);
    if (text === null) return refused(dynoLogRefusals.notText());
    const refusal = rows.take(records.push(text));
    if (refusal !== null) return refused(refusal);
  }
  if (!decoder.end()) return refused(dynoLogRefusals.notText());
  const refusal = rows.take(records.end());
  return refusal === null ? rows.finish() : refused(refusal);
}
