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

test.each([
  [600, 900],
  [1_000, 1_400],
  [2_000, 2_600],
])(
  "on a catalogue of %i items and %i rules, seen by the solver bit by bit, it finds the same least price",
  { timeout: 60_000 },
  async (items, rules) => {
    const question = madeQuestion(1, {
      items,
      rules,
      capacities: 3,
      groups: 30,
      chosen: 6,
      isPossible: true,
    });
    const { status, total } = await completePrerequisites(question, clingoSearch(30_000));
    expect(status).toBe("optimal");
    expect(total).toBe(await refereeTotal(question));
  },
);
