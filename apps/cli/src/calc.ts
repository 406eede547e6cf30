import { text } from "node:stream/consumers";
import { calculationSchema, calculations, runCalculationText } from "@buildproof/contract";

type Outcome = { readonly code: 0 | 2; readonly out: string; readonly error: string };

const USAGE = "calc [NAME [--schema]] < input.json";

/** What the command prints and how it ends; reading standard input is left to the caller. */
export async function calcOutcome(
  args: readonly string[],
  readInput: () => Promise<string>,
): Promise<Outcome> {
  const [name, flag, ...rest] = args;
  if (name === undefined || name === "--help") return printed(list());
  if (rest.length > 0 || (flag !== undefined && flag !== "--schema")) {
    return failed({ code: "usage", message: `This command is called as: ${USAGE}`, path: "" });
  }
  if (!calculations.has(name) || flag === undefined) {
    const answer = runCalculationText(name, calculations.has(name) ? await readInput() : "");
    return answer.ok ? printed(JSON.stringify(answer.value)) : failed(answer.error);
  }
  return printed(JSON.stringify(calculationSchema(name), null, 2));
}

function list(): string {
  const width = Math.max(...[...calculations.keys()].map(({ length }) => length));
  return [...calculations].map(([name, { summary }]) => `${name.padEnd(width)}  ${summary}`).join("\n");
}

function printed(out: string): Outcome {
  return { code: 0, out: `${out}\n`, error: "" };
}

function failed(error: { readonly code: string; readonly message: string; readonly path: string }): Outcome {
  return { code: 2, out: "", error: `${JSON.stringify({ error })}\n` };
}

/** A terminal with nothing piped in counts as no input, so that the command never waits in silence. */
async function standardInput(): Promise<string> {
  return process.stdin.isTTY ? "" : await text(process.stdin);
}

export async function main(): Promise<void> {
  const { code, out, error } = await calcOutcome(process.argv.slice(2), standardInput);
  process.exitCode = code;
  process.stdout.write(out);
  process.stderr.write(error);
}
