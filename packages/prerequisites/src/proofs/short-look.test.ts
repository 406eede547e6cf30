import fc from "fast-check";
import { expect, test } from "vitest";
import { encode } from "../complete/encode";
import type { Search, SearchProgram } from "../complete/search-program";
import { clingoSearch } from "../solver/clingo-search";
import { randomQuestion } from "../testing/random-model";
import { shortLookFirst } from "./short-look";

const NEVER: Search = () => Promise.reject(new Error("The short look was to be enough."));

test("a short look finds a selection exactly where the solver does, and it keeps the rules", async () => {
  const found = { yes: 0, no: 0 };
  const solver = clingoSearch(60_000);
  await fc.assert(
    fc.asyncProperty(randomQuestion(9), async ({ model, facts = {} }) => {
      const { variables, clauses, sums } = encode(model, facts);
      const program: SearchProgram = {
        variables,
        clauses: clauses.map(({ literals }) => literals),
        sums,
        objectives: [],
        shown: variables,
      };
      const alone = await shortLookFirst(NEVER, 100_000)(program);
      const other = await shortLookFirst(solver, 0)(program);
      expect(alone.status).toBe("proven");
      expect(alone.found === null).toBe(other.found === null);
      found[alone.found ? "yes" : "no"] += 1;
      if (!alone.found) return;
      const on = new Set(alone.found);
      const holds = (literal: number): boolean => on.has(Math.abs(literal)) === literal > 0;
      expect(program.clauses.every((literals) => literals.some(holds))).toBe(true);
      for (const { terms, least } of sums) {
        const sum = terms.reduce((all, { literal, weight }) => (holds(literal) ? all + weight : all), 0n);
        expect(sum).toBeGreaterThanOrEqual(least);
      }
    }),
    { numRuns: 300 },
  );
  expect(Math.min(found.yes, found.no)).toBeGreaterThan(20);
});
