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
    return failed({ code: "usage", message: `This command is called as: ${USAGE}.`, path: "" });
  }
  const isKnown = calculations.has(name);
  if (isKnown && flag === "--schema") return printed(JSON.stringify(calculationSchema(name), null, 2));
  const answer = runCalculationText(name, isKnown ? await readInput() : "");
  return answer.ok ? printed(JSON.stringify(answer.value)) : failed(answer.error);
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
