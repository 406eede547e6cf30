import { perform, type Result, type UseCase } from "@buildproof/workshop";
import { headers } from "next/headers";
import { notFound, redirect } from "next/navigation";
import type { z } from "zod";
import { requestContext } from "./request-context";

/**
 * Reads what a page shows. Sends those who are not signed in to the sign-in page and back, and answers what
 * does not exist (or belongs to another workshop) with "not found"; any other refusal is for the page to show.
 */
export async function load<Schema extends z.ZodType, Value>(
  useCase: UseCase<Schema, Value>,
  input: z.input<Schema>,
): Promise<Result<Value>> {
  const result = await perform(await requestContext(), useCase, input);
  if (result.ok) return result;
  const { code } = result.refusal;
  if (code === "not-signed-in" || code === "session-over") {
    const path = (await headers()).get("x-path") ?? "/";
    redirect(`/sign-in?next=${encodeURIComponent(path)}`);
  }
  if (code.endsWith("-not-found")) notFound();
  return result;
}
