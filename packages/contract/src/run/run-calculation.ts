import { ImpossibleInputError } from "@buildproof/units";
import type { Calculation } from "../calculation";
import { calculations } from "../calculations";
import type { Limits } from "../limits";
import { type CalculationAnswer, failure } from "./calculation-error";
import { shapeProblem } from "./input-shape";
import { issueError } from "./issue-error";
import { readJsonExactly } from "./read-json";

/** Answers a named question whose input is already a value. */
export async function runCalculation(
  name: string,
  input: unknown,
  limits: Limits = {},
): Promise<CalculationAnswer> {
  const found = calculations.get(name);
  return found ? answer(found, input, limits) : unknownCalculation(name);
}

/** Answers a named question whose input is JSON text, reading decimals as written where that matters. */
export async function runCalculationText(
  name: string,
  text: string,
  limits: Limits = {},
): Promise<CalculationAnswer> {
  const found = calculations.get(name);
  if (!found) return unknownCalculation(name);
  const json = text.replace(/^\uFEFF/, "");
  let input: unknown;
  try {
    input = found.readsExactDecimals ? readJsonExactly(json) : JSON.parse(json);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const message =
      json.trim() === ""
        ? "There is no input: give one JSON value."
        : `The input is not JSON (${error.message}).`;
    return failure("not-json", message);
  }
  return answer(found, input, limits);
}

async function answer(calculation: Calculation, input: unknown, limits: Limits): Promise<CalculationAnswer> {
  const problem = shapeProblem(input);
  if (problem) return failure("impossible-shape", problem);
  try {
    const attempt = await calculation.attempt(input, limits);
    return attempt.ok ? attempt : { ok: false, error: issueError(attempt.issues, input) };
  } catch (error) {
    if (error instanceof ImpossibleInputError) return failure(error.code, error.message, error.path);
    throw error;
  }
}

function unknownCalculation(name: string): CalculationAnswer {
  const names = [...calculations.keys()].join(", ");
  return failure("unknown-calculation", `There is no calculation "${name}": choose one of ${names}.`);
}
