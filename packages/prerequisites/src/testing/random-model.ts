import fc from "fast-check";
import type { CompletionQuestion } from "../complete/completion-question";
import type { Condition, Model } from "../model/model";

/** Small questions of every kind of rule, with ties, cycles, negative bases and unknown facts. */
export function randomQuestion(largest: number): fc.Arbitrary<CompletionQuestion> {
  return fc.integer({ min: 0, max: largest }).chain((count) => {
    const ids = Array.from({ length: count }, (_, at) => `i${at}`);
    const some = (max: number) => fc.subarray(ids, { maxLength: Math.min(max, count) });
    return fc
      .record({
        items: fc.tuple(...ids.map(item)),
        groups: fc.array(
          fc.record({
            pick: fc.constantFrom("at-most-one" as const, "exactly-one" as const, "at-least-one" as const),
            items: fc.oneof({ weight: 9, arbitrary: some(4) }, { weight: 1, arbitrary: some(count) }),
          }),
          { maxLength: 3 },
        ),
        conditions: fc.array(conditionRule(ids), { maxLength: 10 }),
        capacities: fc.array(capacityRule(ids), { maxLength: 3 }),
        facts: fc.record({ f: amount, g: amount }, { requiredKeys: [] }),
        marks: fc.tuple(...ids.map(() => fc.constantFrom("chosen", "barred", "", "", "", ""))),
        minimise: fc.constantFrom("price" as const, "hours" as const, "leadDays" as const),
      })
      .map(
        ({ items, groups, conditions, capacities, facts, marks, minimise }): CompletionQuestion => ({
          model: {
            items,
            groups: groups
              .filter((g) => g.items.length > 0 || g.pick === "at-most-one")
              .map((g, at) => ({ id: `g${at}`, ...g })),
            rules: [...conditions, ...capacities].map((rule, at) => ({ ...rule, id: `r${at}` })),
          } as Model, // Each part is of the model's own shape; the union is lost in the spread.
          facts,
          chosen: ids.filter((_, at) => marks[at] === "chosen"),
          barred: ids.filter((_, at) => marks[at] === "barred"),
          minimise,
        }),
      );
  });
}

/** The same with items that come along by themselves, one from another too; rules and capacities name them. */
export function randomQuestionWithDerived(largest: number): fc.Arbitrary<CompletionQuestion> {
  return randomQuestion(largest).chain((question) => {
    const ids = question.model.items.map(({ id }) => id);
    const names = ["d0", "d1", "d2"];
    const derived = names.map((id, at) =>
      fc
        .tuple(item(id), fc.boolean(), fc.subarray([...ids.slice(0, 4), ...names.slice(0, at)]))
        .map(([figures, isAny, sources]) => ({
          ...figures,
          from: isAny ? { any: sources } : { all: sources },
        })),
    );
    const naming = fc
      .array(fc.oneof(conditionRule([...ids, ...names]), capacityRule(names)), { maxLength: 3 })
      .map((rules) => rules.map((rule, at) => ({ ...rule, id: `n${at}` })));
    return fc.tuple(fc.tuple(...derived), naming).map(
      ([along, rules]): CompletionQuestion => ({
        ...question,
        model: { ...question.model, rules: [...(question.model.rules ?? []), ...rules] } as Model, // As above.
        derived: along,
      }),
    );
  });
}

/** Halves and quarters are exact in binary, so that the brute force may add them up as numbers. */
const amount = fc.integer({ min: 0, max: 12 }).map((quarters) => quarters / 4);

function item(id: string) {
  return fc
    .record({ price: amount, hours: amount, leadDays: amount }, { requiredKeys: [] })
    .map((figures) => ({ id, ...figures }));
}

function conditionRule(ids: readonly string[]) {
  return fc.record(
    {
      kind: fc.constantFrom("needs", "needs", "needs", "excludes"),
      when: condition(ids),
      // biome-ignore lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
      then: condition(ids),
      because: fc.constant("because"),
    },
    { requiredKeys: ["kind", "then"] },
  );
}

function condition(ids: readonly string[]): fc.Arbitrary<Condition> {
  const fact = fc.record({ fact: fc.constantFrom("f", "g", "unknown"), atLeast: amount });
  const single = ids.length > 0 ? fc.constantFrom(...ids).map((id) => ({ item: id })) : fact;
  const { tree } = fc.letrec<{ tree: Condition; leaf: Condition }>((tie) => ({
    leaf: fc.oneof({ weight: 9, arbitrary: single }, { weight: 1, arbitrary: fact }),
    tree: fc.oneof(
      { maxDepth: 3, withCrossShrink: true },
      tie("leaf"),
      fc.record({ any: fc.array(tie("tree"), { maxLength: 3 }) }),
      fc.record({ all: fc.array(tie("tree"), { maxLength: 3 }) }),
      fc.record({ not: tie("tree") }),
    ),
  }));
  return tree;
}

function capacityRule(ids: readonly string[]) {
  const amounts = fc
    .uniqueArray(ids.length > 0 ? fc.constantFrom(...ids) : fc.constant("none"), {
      maxLength: Math.min(4, ids.length),
    })
    .chain((named) =>
      fc
        .tuple(...named.map(() => fc.integer({ min: -2, max: 12 })))
        .map((values) => Object.fromEntries(named.map((id, at) => [id, (values[at] ?? 0) / 4]))),
    );
  return fc.record(
    {
      kind: fc.constant("capacity"),
      base: fc.integer({ min: -4, max: 12 }).map((quarters) => quarters / 4),
      supply: amounts,
      demand: amounts,
      reservePct: fc.constantFrom(0, 10, 25),
    },
    { requiredKeys: ["kind"] },
  );
}
