// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import {
  type CompletionQuestion,
  checkPrerequisites,
  completePrerequisites,
  type DerivedItem,
} from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { type LabourPlan, labour } from "@buildproof/pricing";
import fc from "fast-check";
import { expect, test } from "vitest";

const ids = (prefix: string, count: number) => Array.from({ length: count }, (_, at) => `${prefix}${at}`);
const operationIds = ids("operation-", 7);
const quarters = fc.nat(12).map((count) => count / 4);

/** Access work that may need other access work before it in the list, and operations that need some of it. */
const plan: fc.Arbitrary<LabourPlan> = fc.record({
  access: fc.tuple(
    ...ids("access-", 5).map((id, at, all) =>
      fc.record({ id: fc.constant(id), hours: quarters, needs: fc.subarray(all.slice(0, at)) }),
    ),
  ),
  operations: fc.tuple(
    ...operationIds.map((id) =>
      fc.record({ id: fc.constant(id), hours: quarters, access: fc.subarray(ids("access-", 5)) }),
    ),
  ),
});
const needs = fc.array(
  fc.tuple(fc.constantFrom(...operationIds), fc.subarray(operationIds, { minLength: 1, maxLength: 3 })),
  {
    minLength: 3,
    maxLength: 8,
  },
);

/** The hours of some of the operations, by the calculation that quotes them. */
function hoursOf({ access, operations }: LabourPlan, selected: readonly string[]): number {
  return labour({ access, operations: operations.filter(({ id }) => selected.includes(id)) }).hours;
}

/** Each piece of access work comes along with the operations and the access work that need it. */
function accessAsDerived({ access, operations }: LabourPlan): readonly DerivedItem[] {
  return access.map(({ id, hours }) => {
    const users = [
      ...operations.filter((operation) => operation.access?.includes(id)),
      ...access.filter((other) => other.needs?.includes(id)),
    ];
    return { id, hours, from: { any: users.map((user) => user.id) } };
  });
}

test("the fewest hours that complete a choice are those that labour charges, shared access work once", {
  timeout: 60_000,
}, async () => {
  let saved = 0;
  const property = fc.asyncProperty(
    plan,
    needs,
    fc.subarray(operationIds, { minLength: 1, maxLength: 3 }),
    async (work, wanted, chosen) => {
      const question: CompletionQuestion = {
        model: {
          items: work.operations.map(({ id, hours }) => ({ id, hours })),
          rules: wanted.map(([item, any], at) => ({
            id: `rule-${at}`,
            kind: "needs",
            when: { item },
            then: { any: any.map((each) => ({ item: each })) },
          })),
        },
        chosen,
        derived: accessAsDerived(work),
        minimise: "hours",
      };
      const { add, total } = await completePrerequisites(question, clingoSearch(30_000));
      const before = hoursOf(work, chosen);
      expect(total).toBe(hoursOf(work, [...chosen, ...add]) - before);
      for (let set = 0; set < 2 ** operationIds.length; set += 1) {
        const selected = operationIds.filter((id, at) => chosen.includes(id) || (set >> at) & 1);
        if (!checkPrerequisites(question.model, selected).ok) continue;
        expect(hoursOf(work, selected) - before).toBeGreaterThanOrEqual(total ?? Number.NaN);
      }
      const apart = work.operations.filter(({ id }) => add.includes(id)).map(({ id }) => hoursOf(work, [id]));
      if (apart.reduce((sum, hours) => sum + hours, 0) > (total ?? 0)) saved += 1;
    },
  );
  await fc.assert(property, { numRuns: 70 });
  expect(saved).toBeGreaterThan(4);
});
