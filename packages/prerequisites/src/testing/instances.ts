// biome-ignore-all lint/suspicious/noThenProperty: `then` is the rule model's own word and nothing awaits a rule.
import { checkPrerequisites } from "../check/check-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import type { CapacityRule, Condition, Group, Item, Rule } from "../model/model";

export type InstanceSize = {
  readonly items: number;
  readonly rules: number;
  readonly capacities: number;
  readonly groups: number;
  readonly chosen: number;
  /** Whether the rules are made so that some selection keeps them all. */
  readonly isPossible?: boolean;
};

/** Made questions that resemble a workshop's catalogue; the same seed makes the same question. */
export function madeQuestion(seed: number, size: InstanceSize): CompletionQuestion {
  const random = randomFrom(seed);
  const below = (count: number): number => Math.floor(random() * count);
  const ids = Array.from({ length: size.items }, (_, at) => `item-${at}`);
  const pick = (count: number): readonly string[] => {
    const picked = new Set<string>();
    while (picked.size < Math.min(count, ids.length)) picked.add(ids[below(ids.length)] ?? "");
    return [...picked];
  };
  const any = (count: number): Condition => ({ any: pick(count).map((item) => ({ item })) });
  const items = ids.map(
    (id): Item => ({ id, price: 20 + below(4000), hours: below(40) / 10, leadDays: below(15) }),
  );
  // Variants of one part stand beside each other in a catalogue.
  const groups = Array.from({ length: size.groups }, (_, at): Group => {
    const first = below(ids.length - 4);
    return { id: `group-${at}`, pick: "at-most-one", items: ids.slice(first, first + 2 + below(3)) };
  });
  const rules = Array.from({ length: size.rules }, (_, at): Rule => {
    const [item = ""] = pick(1);
    if (below(8) === 0)
      return { id: `rule-${at}`, kind: "excludes", when: { item }, then: { item: pick(1)[0] ?? "" } };
    const when: Condition = below(4) === 0 ? { all: [{ item }, { item: pick(1)[0] ?? "" }] } : { item };
    return { id: `rule-${at}`, kind: "needs", when, then: any(1 + below(4)) };
  });
  const capacities = Array.from({ length: size.capacities }, (_, at): CapacityRule => {
    const amounts = (count: number, most: number) =>
      Object.fromEntries(pick(count).map((id) => [id, 1 + below(most)]));
    const most = Math.max(8, Math.round(size.items / 6));
    return {
      id: `capacity-${at}`,
      kind: "capacity",
      base: 40,
      supply: amounts(Math.min(most, 40), 80),
      demand: amounts(Math.min(most, 40), 60),
      reservePct: 10,
    };
  });
  const made = [...rules.filter(isNotAboutItself), ...capacities];
  const chosen = pick(size.chosen);
  if (!size.isPossible) return { model: { items, groups, rules: made }, chosen, minimise: "price" };
  // Whatever speaks against this one selection is left out.
  const selection = [...new Set([...chosen, ...pick(Math.ceil(size.items / 4))])];
  const { findings } = checkPrerequisites({ items, groups, rules: made }, selection);
  const against = new Set(findings.map(({ rule }) => rule));
  const isFor = ({ id }: { readonly id: string }): boolean => !against.has(id);
  return {
    model: { items, groups: groups.filter(isFor), rules: made.filter(isFor) },
    chosen,
    minimise: "price",
  };
}

function isNotAboutItself(rule: Rule): boolean {
  return (
    JSON.stringify("when" in rule ? rule.when : {}) !== JSON.stringify("then" in rule ? rule.then : null)
  );
}

/**
 * Uniform from 0 to 1, from a seed.
 *
 * @source mulberry32 (Tommy Ettinger, public domain).
 */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
