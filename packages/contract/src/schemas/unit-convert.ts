import { unitConvert, unitNames } from "@buildproof/units";
import { z } from "zod";
import { calculation } from "../calculation";

const unitName = z.enum(unitNames, { error: `choose one of ${unitNames.join(", ")}` });

export const unitConvertCalculation = calculation({
  summary: "Convert a value between two units of one dimension",
  input: z.strictObject({ value: z.number(), from: unitName, to: unitName }),
  output: z.strictObject({ value: z.number() }),
  run: ({ value, from, to }) => ({ value: unitConvert(value, from, to) }),
});
