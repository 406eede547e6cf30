import {
  calculationSchema,
  calculations,
  readWithin,
  runCalculationText,
  WITHIN_SENTENCE,
} from "@buildproof/contract";

type Outcome = { readonly code: 0 | 2; readonly out: string; readonly error: string };

const USAGE = "calc [NAME [--schema | --within MS]] < input.json; --within is for calculations that search";

/** What the command prints and how it ends; reading standard input is left to the caller. */
export async function calcOutcome(
  args: readonly string[],
  readInput: () => Promise<string>,
): Promise<Outcome> {
  const [name, flag, written, ...rest] = args;
  if (name === undefined || name === "--help") return printed(list());
  const found = calculations.get(name);
  if (flag === "--within" && found?.isTimed && written !== undefined && rest.length === 0) {
    const withinMs = readWithin(written);
    if (withinMs === null) return failed({ code: "invalid-field", message: WITHIN_SENTENCE, path: "within" });
    return answered(name, await readInput(), withinMs);
  }
  if (written !== undefined || (flag !== undefined && flag !== "--schema")) {
    return failed({ code: "usage", message: `This command is called as: ${USAGE}.`, path: "" });
  }
  if (found && flag === "--schema") return printed(JSON.stringify(calculationSchema(name), null, 2));
  return answered(name, found ? await readInput() : "");
}

async function answered(name: string, input: string, withinMs?: number): Promise<Outcome> {
  const answer = await runCalculationText(name, input, { withinMs });
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
