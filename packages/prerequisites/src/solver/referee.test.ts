import { expect, test } from "vitest";
import { completePrerequisites } from "../complete/complete-prerequisites";
import { refereeTotal } from "../testing/highs-referee";
import { madeQuestion } from "../testing/instances";
import { clingoSearch } from "./clingo-search";

const SIZE = { items: 60, rules: 120, capacities: 5, groups: 8, chosen: 4 };

test.each(["price", "hours", "leadDays"] as const)(
  "on catalogues of 60 items an independent solver finds the same least %s",
  { timeout: 60_000 },
  async (minimise) => {
    const seen = new Set<string>();
    for (let seed = 1; seed <= 12; seed += 1) {
      const question = { ...madeQuestion(seed, SIZE), minimise };
      const { status, total, bound } = await completePrerequisites(question, clingoSearch(30_000));
      expect({ seed, total }).toEqual({ seed, total: await refereeTotal(question) });
      expect(bound).toBe(total);
      seen.add(status);
    }
    expect([...seen].sort()).toEqual(["impossible", "optimal"]);
  },
);
