import { perform, type Refusal, type UseCase } from "@buildproof/workshop";
import type { z } from "zod";
import { type FormState, refusedForm, savedForm } from "@/design/forms/form-state";
import { requestContext } from "./request-context";

type Outcome<Value> = { readonly state: FormState; readonly value?: Value };

/** Runs the use case behind a form, once per `requestKey`, and turns its answer into what the form shows. */
export async function runForm<Schema extends z.ZodType, Value>(
  useCase: UseCase<Schema, Value>,
  input: z.input<Schema>,
  form: FormData,
  saved?: string | ((value: Value) => string),
): Promise<Outcome<Value>> {
  const key = form.get("requestKey");
  const result = await perform(
    await requestContext(),
    useCase,
    input,
    typeof key === "string" && key !== "" ? { key } : {},
  );
  if (!result.ok) return { state: refusedForm(asFormRefusal(result.refusal), form) };
  return {
    state: savedForm(typeof saved === "function" ? saved(result.value) : saved),
    value: result.value,
  };
}

export function asFormRefusal(refusal: Refusal) {
  const { sentence, field, data } = refusal;
  return {
    sentence,
    ...(field === undefined ? {} : { field }),
    ...(hasPoints(data) ? { points: data.points } : {}),
  };
}

/** A refusal with several unmet points carries them as sentences in `data.points`. */
function hasPoints(data: unknown): data is { readonly points: readonly string[] } {
  return typeof data === "object" && data !== null && "points" in data && Array.isArray(data.points);
}
