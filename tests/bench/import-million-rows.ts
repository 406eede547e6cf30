import { importLog } from "./import-log";
import { millionRows } from "./million-rows";

/* A process of its own: imports the log, made as it goes, and prints the curve's points and the most memory held. */
async function* streamed(): AsyncGenerator<Uint8Array> {
  yield* millionRows();
}

const points = await importLog(streamed());
console.log(JSON.stringify({ points, peakMb: Math.round(process.resourceUsage().maxRSS / 1_000) }));
