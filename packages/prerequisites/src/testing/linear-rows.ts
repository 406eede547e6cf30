import type { CompletionQuestion } from "../complete/completion-question";
import type { Condition, Group, Rule } from "../model/model";

type Term = readonly [name: string, weight: number];

/** A question as linear rows, `terms` ≥ `least`, written without any of the search's own translation. */
export class LinearRows {
  readonly rows: { readonly terms: ReadonlyMap<string, number>; readonly least: number }[] = [];
  readonly binaries: readonly string[];
  readonly continuous: { readonly name: string; readonly most: number }[] = [];
  readonly objective: readonly Term[];
  readonly #names: ReadonlyMap<string, string>;

  constructor(private readonly question: CompletionQuestion) {
    const { model, chosen = [], barred = [] } = question;
    this.#names = new Map(model.items.map(({ id }, at) => [id, `x${at}`]));
    this.binaries = [...this.#names.values()];
    for (const group of model.groups ?? []) this.#addGroup(group);
    for (const rule of model.rules ?? []) this.#addRule(rule);
    for (const id of chosen) this.#row([[this.#name(id), 1]], 1);
    for (const id of barred) this.#row([[this.#name(id), -1]], 0);
    this.objective = this.#objective();
  }

  #name(id: string): string {
    return this.#names.get(id) ?? "";
  }

  #fresh(most: number): string {
    const name = `c${this.continuous.length}`;
    this.continuous.push({ name, most });
    return name;
  }

  #row(pairs: readonly Term[], least: number): void {
    const terms = new Map<string, number>();
    for (const [name, weight] of pairs) terms.set(name, (terms.get(name) ?? 0) + weight);
    this.rows.push({ terms, least });
  }

  #addGroup({ pick, items }: Group): void {
    const members = items.map((id) => this.#name(id));
    const sum = (weight: number): readonly Term[] => members.map((name) => [name, weight]);
    if (pick !== "at-most-one") this.#row(sum(1), 1);
    if (pick !== "at-least-one") this.#row(sum(-1), -1);
  }

  #addRule(rule: Rule): void {
    if (rule.kind === "capacity") {
      const factor = 1 + Number(rule.reservePct ?? 0) / 100;
      const supply = Object.entries(rule.supply ?? {}).map(
        ([id, each]): Term => [this.#name(id), Number(each)],
      );
      const demand = Object.entries(rule.demand ?? {}).map(
        ([id, each]): Term => [this.#name(id), -factor * Number(each)],
      );
      this.#row([...supply, ...demand], -Number(rule.base ?? 0));
      return;
    }
    const when: readonly Term[] = rule.when ? [[this.#truth(rule.when), -1]] : [];
    const sign = rule.kind === "needs" ? 1 : -1;
    this.#row([...when, [this.#truth(rule.then), sign]], (sign === 1 ? 1 : 0) - when.length);
  }

  /** A variable that is 1 when the condition holds and 0 when it does not. */
  #truth(condition: Condition): string {
    if ("item" in condition) return this.#name(condition.item);
    const value = this.#fresh(1);
    if ("fact" in condition) {
      const has = Number(this.question.facts?.[condition.fact] ?? 0);
      if (has >= Number(condition.atLeast)) this.#row([[value, 1]], 1);
      else this.#row([[value, -1]], 0);
      return value;
    }
    if ("not" in condition) {
      const inner = this.#truth(condition.not);
      this.#row(
        [
          [value, 1],
          [inner, 1],
        ],
        1,
      );
      this.#row(
        [
          [value, -1],
          [inner, -1],
        ],
        -1,
      );
      return value;
    }
    if ("all" in condition) this.#bind(value, condition.all, 1, 1 - condition.all.length);
    else this.#bind(value, condition.any, -1, 0);
    return value;
  }

  #bind(value: string, conditions: readonly Condition[], sign: 1 | -1, least: number): void {
    const parts = conditions.map((part) => this.#truth(part));
    for (const part of parts) {
      this.#row(
        [
          [part, sign],
          [value, -sign],
        ],
        0,
      );
    }
    this.#row([[value, sign], ...parts.map((part): Term => [part, -sign])], least);
  }

  #objective(): readonly Term[] {
    const { model, chosen = [], minimise = "price" } = this.question;
    const kept = new Set(chosen);
    const added = model.items.filter(({ id }) => !kept.has(id));
    const costs = added.map((item): Term => [this.#name(item.id), Number(item[minimise] ?? 0)]);
    if (minimise !== "leadDays") return costs;
    const slowest = this.#fresh(1e6);
    for (const [name, lead] of costs) {
      this.#row(
        [
          [slowest, 1],
          [name, -lead],
        ],
        0,
      );
    }
    return [[slowest, 1]];
  }
}
