import type { WrittenDecimal } from "@buildproof/units";
import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPrerequisites } from "../check/check-prerequisites";
import { completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import { derivedFrom } from "../model/derived-item";
import { withDerived } from "../model/with-derived";
import { bruteForce } from "../testing/brute-force";
import { madeQuestion } from "../testing/instances";
import { onlyOf } from "../testing/only-of";
import { randomQuestion, randomQuestionWithDerived } from "../testing/random-model";
import { clingoSearch } from "./clingo-search";

const RUNS = 2_000;

const seen = { impossible: 0 };

async function expectAsByBruteForce(question: CompletionQuestion, search = clingoSearch(60_000)) {
  const best = bruteForce(question);
  const answer = await completePrerequisites(question, search);
  expect(answer.status).toBe(best ? "optimal" : "impossible");
  expect(answer.add).toEqual(best ?? []);
  const { chosen = [], facts, derived = [] } = question;
  if (best) {
    expect(answer.total).toBe(answer.bound);
    for (const { item, rules } of answer.because) {
      const without = [...chosen, ...best.filter((id) => id !== item)];
      const selected = [...without, ...derivedFrom(derived, without)];
      const { findings } = checkPrerequisites(withDerived(question.model, derived), selected, facts);
      expect(rules).toEqual(findings.map(({ rule }) => rule));
      expect(rules).not.toEqual([]);
    }
    return;
  }
  seen.impossible += 1;
  const { clash } = answer;
  const members = [...clash.chosen, ...clash.groups, ...clash.rules];
  expect(bruteForce(onlyOf(question, new Set(members)))).toBeNull();
  for (const id of members) {
    const rest = new Set(members.filter((other) => other !== id));
    expect(bruteForce(onlyOf(question, rest))).not.toBeNull();
  }
}

test("the completion is the one that looking at every selection finds", { timeout: 60_000 }, async () => {
  seen.impossible = 0;
  await fc.assert(
    fc.asyncProperty(randomQuestion(9), (question) => expectAsByBruteForce(question)),
    { numRuns: RUNS },
  );
  expect(seen.impossible).toBeGreaterThan(RUNS / 20);
});

test("with items that come along by themselves it is so too", { timeout: 60_000 }, async () => {
  seen.impossible = 0;
  await fc.assert(
    fc.asyncProperty(randomQuestionWithDerived(7), (question) => expectAsByBruteForce(question)),
    {
      numRuns: RUNS / 2,
    },
  );
  expect(seen.impossible).toBeGreaterThan(RUNS / 40);
});

/** Prices that only a solver that adds up in whole numbers of any size may be asked about: quarters times 2^58. */
function withHugePrices(question: CompletionQuestion): CompletionQuestion {
  const huge = <T extends { readonly price?: WrittenDecimal | undefined }>(item: T): T => ({
    ...item,
    price: String(BigInt(Number(item.price ?? 0) * 4) << 56n),
  });
  const { model, derived } = question;
  return { ...question, model: { ...model, items: model.items.map(huge) }, derived: derived?.map(huge) };
}

/** Questions that leave much to decide: few chosen, and needs with several ways. */
const open = fc
  .record({
    seed: fc.nat(1_000_000),
    rules: fc.integer({ min: 8, max: 30 }),
    isPossible: fc.boolean(),
    minimise: fc.constantFrom("price" as const, "leadDays" as const),
  })
  .map(({ seed, rules, isPossible, minimise }) => ({
    ...madeQuestion(seed, { items: 10, rules, capacities: 3, groups: 2, chosen: 2, isPossible }),
    minimise,
  }));

test("where much is left to decide it is so too, with the solver and where it is not needed", {
  timeout: 60_000,
}, async () => {
  let asked = 0;
  const property = fc.asyncProperty(open, async (question) => {
    await expectAsByBruteForce(question);
    const search = clingoSearch(60_000);
    await expectAsByBruteForce(withHugePrices(question), (program, share) => {
      asked += 1;
      return search(program, share);
    });
  });
  await fc.assert(property, { numRuns: Math.floor(RUNS / 13) });
  expect(asked).toBeGreaterThan(RUNS / 30);
});
