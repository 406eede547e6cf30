import { checkPrerequisites } from "@buildproof/prerequisites";
import { z } from "zod";
import { calculation } from "../calculation";
import { prerequisitesInput } from "./prerequisites-model";

export const prerequisitesCheckCalculation = calculation({
  summary: "Everything wrong with a selection of items, and why",
  readsExactDecimals: true,
  input: prerequisitesInput,
  output: z.strictObject({
    ok: z.boolean(),
    findings: z
      .array(
        z.strictObject({
          rule: z.string(),
          kind: z.enum(["group", "needs", "excludes", "capacity"]),
          items: z.array(z.string()).readonly(),
          because: z.string(),
          shortBy: z.number().optional(),
        }),
      )
      .readonly(),
  }),
  run: ({ items, groups, rules, chosen = [], facts = {}, barred = [] }) =>
    checkPrerequisites({ items, groups, rules }, chosen, facts, barred),
});
