import fc from "fast-check";
import { expect, test } from "vitest";
import { checkPrerequisites } from "../check/check-prerequisites";
import { completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import { bruteForce } from "../testing/brute-force";
import { onlyOf } from "../testing/only-of";
import { randomQuestion } from "../testing/random-model";
import { clingoSearch } from "./clingo-search";

const RUNS = 2_000;

const complete = (question: CompletionQuestion) => completePrerequisites(question, clingoSearch(60_000));

test("the completion is the one that looking at every selection finds", { timeout: 60_000 }, async () => {
  let impossible = 0;
  await fc.assert(
    fc.asyncProperty(randomQuestion(9), async (question) => {
      const best = bruteForce(question);
      const answer = await complete(question);
      expect(answer.status).toBe(best ? "optimal" : "impossible");
      expect(answer.add).toEqual(best ?? []);
      if (best) {
        expect(answer.total).toBe(answer.bound);
        for (const { item, rules } of answer.because) {
          const without = [...(question.chosen ?? []), ...best.filter((id) => id !== item)];
          const { findings } = checkPrerequisites(question.model, without, question.facts);
          expect(rules).toEqual(findings.map(({ rule }) => rule));
          expect(rules).not.toEqual([]);
        }
        return;
      }
      impossible += 1;
      const { chosen, groups, rules } = answer.clash;
      const clash = [...chosen, ...groups, ...rules];
      expect(bruteForce(onlyOf(question, new Set(clash)))).toBeNull();
      for (const id of clash) {
        const rest = new Set(clash.filter((other) => other !== id));
        expect(bruteForce(onlyOf(question, rest))).not.toBeNull();
      }
    }),
    { numRuns: RUNS },
  );
  expect(impossible).toBeGreaterThan(RUNS / 20);
});
