import { z } from "zod";
import { calculations } from "../calculations";

/** JSON Schema of what goes in and what comes out; null for a name that is not there. */
export function calculationSchema(
  name: string,
): { readonly input: unknown; readonly output: unknown } | null {
  const found = calculations.get(name);
  if (!found) return null;
  return {
    input: z.toJSONSchema(found.input, { io: "input" }),
    output: z.toJSONSchema(found.output, { io: "output" }),
  };
}
