import { completePrerequisites } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { z } from "zod";
import { calculation } from "../calculation";
import { prerequisitesInput } from "./prerequisites-model";

const WITHIN_MS = 10_000;
const ids = z.array(z.string()).readonly();

export const prerequisitesCompleteCalculation = calculation({
  summary: "The provably best completion of a selection by price, hours or lead time, or why there is none",
  readsExactDecimals: true,
  isTimed: true,
  input: prerequisitesInput,
  output: z.strictObject({
    status: z.enum(["optimal", "impossible", "time-limit"]),
    add: ids,
    total: z.number().nullable(),
    bound: z.number().nullable(),
    because: z.array(z.strictObject({ item: z.string(), rules: ids })).readonly(),
    clash: z.strictObject({ chosen: ids, groups: ids, rules: ids }),
  }),
  run: ({ items, groups, rules, ...choice }, { withinMs = WITHIN_MS, cancelled }) =>
    completePrerequisites({ model: { items, groups, rules }, ...choice }, clingoSearch(withinMs, cancelled)),
});
