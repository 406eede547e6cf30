import { z } from "zod";
import { type AssumptionName, assumptionNames } from "./assumption-names";
import type { GivenFigures } from "./used-assumptions";

const change = z.object({
  value: z.number(),
  reason: z.string(),
  /** The person's name as it was then. */
  by: z.string(),
  at: z.string(),
});
export type AssumptionChange = z.output<typeof change>;

/** What a build assumes otherwise than usual: the JSON of its `assumptions`. Names that are no more are left out. */
export const storedAssumptions = z.record(z.string(), change).transform(
  (stored) =>
    Object.fromEntries(Object.entries(stored).filter(([name]) => isName(name))) as AssumptionChanges, // Filtered by name.
);
export type AssumptionChanges = Readonly<Partial<Record<AssumptionName, AssumptionChange>>>;

const names: ReadonlySet<string> = new Set(assumptionNames);

function isName(name: string): name is AssumptionName {
  return names.has(name);
}

/** The figures alone, as a forecast takes them. */
export function givenFigures(changes: AssumptionChanges): GivenFigures {
  const given: Partial<Record<AssumptionName, number>> = {};
  for (const name of assumptionNames) {
    const changed = changes[name];
    if (changed) given[name] = changed.value;
  }
  return given;
}
