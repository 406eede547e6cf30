import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPrerequisites } from "../check/check-prerequisites";
import { completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import { derivedFrom } from "../model/derived-item";
import { withDerived } from "../model/with-derived";
import { bruteForce } from "../testing/brute-force";
import { onlyOf } from "../testing/only-of";
import { randomQuestion, randomQuestionWithDerived } from "../testing/random-model";
import { clingoSearch } from "./clingo-search";

const RUNS = 2_000;

const complete = (question: CompletionQuestion) => completePrerequisites(question, clingoSearch(60_000));

const seen = { impossible: 0 };

async function expectAsByBruteForce(question: CompletionQuestion): Promise<void> {
  const best = bruteForce(question);
  const answer = await complete(question);
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
  await fc.assert(fc.asyncProperty(randomQuestion(9), expectAsByBruteForce), { numRuns: RUNS });
  expect(seen.impossible).toBeGreaterThan(RUNS / 20);
});

test("with items that come along by themselves it is so too", { timeout: 60_000 }, async () => {
  seen.impossible = 0;
  await fc.assert(fc.asyncProperty(randomQuestionWithDerived(7), expectAsByBruteForce), {
    numRuns: RUNS / 2,
  });
  expect(seen.impossible).toBeGreaterThan(RUNS / 40);
});
