import { Readable } from "node:stream";
import Papa from "papaparse";
import type { Benchmark } from "./benchmark";
import { importLog } from "./import-log";
import { millionRows } from "./million-rows";

let made: readonly Buffer[] | null = null;

/** Made once, at the first use; both sides stream the same bytes. */
function chunks(): readonly Buffer[] {
  made ??= [...millionRows()].map((chunk) => Buffer.from(chunk));
  return made;
}

/**
 * A long log from bytes to corrected curves, against splitting the same stream into fields and stopping there. The
 * baseline is the fastest kept parser we know, in its own streaming mode.
 */
export const dynoLogBenchmark: Benchmark = {
  name: "dyno log, 1,000,000 rows",
  ours: { name: "read, check, reduce, correct", run: () => importLog(streamed()) },
  baseline: { name: "Papa Parse, streaming", run: splitIntoFields },
  limits: { ratio: 3 },
  rounds: 7,
};

async function* streamed(): AsyncGenerator<Uint8Array> {
  yield* chunks();
}

function splitIntoFields(): Promise<number> {
  return new Promise((resolve, reject) => {
    let rows = 0;
    Papa.parse<string[]>(Readable.from(chunks()), {
      chunk: ({ data }) => {
        rows += data.length;
      },
      complete: () => resolve(rows),
      error: reject,
    });
  });
}
