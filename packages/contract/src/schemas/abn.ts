import { abn } from "@buildproof/compliance";
import { z } from "zod";
import { calculation } from "../calculation";

export const abnCalculation = calculation({
  summary: "Whether an Australian Business Number passes its check (not whether it is registered)",
  input: z.strictObject({ abn: z.string() }),
  output: z.strictObject({
    valid: z.boolean(),
    abn: z.string().nullable(),
    display: z.string().nullable(),
  }),
  run: (input) => abn(input.abn),
});
