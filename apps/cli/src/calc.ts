import { text } from "node:stream/consumers";
import { calcOutcome } from "./calc-outcome";

/** A terminal with nothing piped in counts as no input, so that the command never waits in silence. */
async function standardInput(): Promise<string> {
  return process.stdin.isTTY ? "" : await text(process.stdin);
}

const { code, out, error } = await calcOutcome(process.argv.slice(2), standardInput);
process.exitCode = code;
process.stdout.write(out);
process.stderr.write(error);
