import { TextDecoder } from "node:util";
import { csvRecords } from "./csv-records";
import { dynoLogRefusals } from "./dyno-log-refusals";
import type { DynoLogRefusal, DynoLogResult, DynoLogRow } from "./dyno-log-row";
import { dynoLogRows } from "./dyno-log-rows";

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
  const decoder = new TextDecoder("utf-8", { fatal: true });
  const records = csvRecords();
  const rows = dynoLogRows(records.delimiter, onRow, limitRuns);
  const refused = (refusal: DynoLogRefusal): DynoLogResult => ({ ok: false, refusal });
  let bytes = 0;
  for await (const chunk of stream) {
    bytes += chunk.byteLength;
    if (bytes > limitBytes) return refused(dynoLogRefusals.tooLarge(limitBytes));
    const text = decoded(decoder, chunk);
    if (text === null) return refused(dynoLogRefusals.notText());
    const refusal = rows.take(records.push(text));
    if (refusal !== null) return refused(refusal);
  }
  const last = decoded(decoder, null);
  if (last === null) return refused(dynoLogRefusals.notText());
  const refusal = rows.take(records.push(last)) ?? rows.take(records.end());
  return refusal === null ? rows.finish() : refused(refusal);
}

/** Text of the next bytes, or null where they are no UTF-8 text. */
function decoded(decoder: TextDecoder, chunk: Uint8Array | null): string | null {
  if (chunk?.includes(0)) return null;
  try {
    return chunk === null ? decoder.decode() : decoder.decode(chunk, { stream: true });
  } catch {
    return null;
  }
}
