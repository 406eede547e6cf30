// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { restart } from "clingo-wasm";
import { beforeAll, expect, test } from "vitest";
import { checkPrerequisites } from "../check/check-prerequisites";
import { type Completion, completePrerequisites } from "../complete/complete-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import { madeQuestion } from "../testing/instances";
import { clingoSearch } from "./clingo-search";

/** A covering problem too large to be proven in the time the tests give it, with answers easily found. */
const hard: CompletionQuestion = {
  model: {
    items: Array.from({ length: 211 }, (_, at) => ({ id: `part-${at}`, price: 100 + ((at * 37) % 41) })),
    rules: Array.from({ length: 500 }, (_, at) => ({
      id: `rule-${at}`,
      kind: "needs" as const,
      then: {
        any: [0, 1, 2, 3, 4].map((way) => ({
          item: `part-${(at * (2 * way + 3) + at * at * (way + 1) + 17 * way) % 211}`,
        })),
      },
    })),
  },
};
/** Soon proven, but too large to be settled without the solver. */
const easy = madeQuestion(1, {
  items: 600,
  rules: 900,
  capacities: 3,
  groups: 30,
  chosen: 6,
  isPossible: true,
});
let answer: Completion;

beforeAll(async () => {
  answer = await completePrerequisites(easy, clingoSearch(20_000));
  expect(answer.status).toBe("optimal");
});

test("a search that is not proven in time answers with a bound that its best keeps to", {
  timeout: 30_000,
}, async () => {
  const begun = performance.now();
  const answer = await completePrerequisites(hard, clingoSearch(2_000));
  expect(performance.now() - begun).toBeLessThan(6_000);
  expect(answer.status).toBe("time-limit");
  expect(answer.bound).toBeGreaterThan(0);
  expect(answer.total).toBeGreaterThanOrEqual(answer.bound ?? Number.NaN);
  expect(checkPrerequisites(hard.model, answer.add).ok).toBe(true);
  expect(answer.clash).toEqual({ chosen: [], groups: [], rules: [] });
});

test("after a search was stopped the next one is answered", { timeout: 30_000 }, async () => {
  await completePrerequisites(hard, clingoSearch(500));
  expect(await completePrerequisites(easy, clingoSearch(10_000))).toEqual(answer);
});

test("a solver that dies in the middle counts as out of time, and a new one takes the next question", {
  timeout: 30_000,
}, async () => {
  const answering = completePrerequisites(hard, clingoSearch(20_000));
  const begun = performance.now();
  setTimeout(() => void restart(), 1_000);
  expect(await answering).toMatchObject({ status: "time-limit", total: expect.any(Number) });
  expect(performance.now() - begun).toBeLessThan(10_000);
  expect((await completePrerequisites(easy, clingoSearch(10_000))).status).toBe("optimal");
});

test("a question that nobody waits for any more is given up", { timeout: 30_000 }, async () => {
  const waiting = new AbortController();
  const answering = completePrerequisites(hard, clingoSearch(20_000, waiting.signal));
  const begun = performance.now();
  setTimeout(() => waiting.abort(), 500);
  expect((await answering).status).toBe("time-limit");
  expect(performance.now() - begun).toBeLessThan(10_000);
  expect((await completePrerequisites(easy, clingoSearch(10_000, waiting.signal))).status).toBe("time-limit");
});

test("questions asked at once are each answered, one that waited too long as out of time", {
  timeout: 30_000,
}, async () => {
  const [first, second, third] = await Promise.all([
    completePrerequisites(hard, clingoSearch(1_500)),
    completePrerequisites(easy, clingoSearch(1)),
    completePrerequisites(easy, clingoSearch(20_000)),
  ]);
  expect(first.status).toBe("time-limit");
  expect(second).toMatchObject({ status: "time-limit", add: [], total: null, bound: expect.any(Number) });
  expect(second.bound).toBeLessThanOrEqual(answer.total ?? Number.NaN);
  expect(third).toEqual(answer);
});

test("who waits for another's search and is called off, or out of time, is answered at once", {
  timeout: 30_000,
}, async () => {
  const long = completePrerequisites(hard, clingoSearch(3_000));
  const waiting = new AbortController();
  const begun = performance.now();
  const calledOff = completePrerequisites(easy, clingoSearch(20_000, waiting.signal));
  setTimeout(() => waiting.abort(), 100);
  expect((await calledOff).status).toBe("time-limit");
  expect((await completePrerequisites(easy, clingoSearch(200))).status).toBe("time-limit");
  expect(performance.now() - begun).toBeLessThan(2_500);
  expect((await long).status).toBe("time-limit");
});

test("the thread that asks goes on while the solver searches", { timeout: 30_000 }, async () => {
  await completePrerequisites(easy, clingoSearch(10_000));
  let longest = 0;
  let last = performance.now();
  const pulse = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  await completePrerequisites(hard, clingoSearch(1_500));
  clearInterval(pulse);
  expect(longest).toBeLessThan(500);
});
