import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findings-in";
import { checkChoice } from "../model/check-ids";
import { type Facts, type Model, NO_FACTS } from "../model/model";
import { type PreparedModel, prepare } from "../model/prepare";
import { type Situation, situation, withItems } from "../model/situation";
import type { Reason, Step } from "./reason";

/**
 * For each added item the chain of reasons back to a choice: the rule that breaks without it, the item that brings
 * the rule about, the rule that breaks without that, and so on. Items that hold each other in a circle are
 * entered where something outside asks for one of them.
 *
 * @throws ImpossibleInputError for an unknown or doubled id.
 */
export function reasonsFor(
  model: Model,
  chosen: readonly string[],
  added: readonly string[],
  facts: Facts = NO_FACTS,
): readonly Reason[] {
  const ready = prepare(model);
  checkChoice(ready.itemIds, [...chosen, ...added], []);
  const links = new Links(ready, situation(chosen, facts), added);
  return added.map((item) => ({ item, chain: links.chainFrom(item) }));
}

type Link = { readonly step: Step; readonly next: string | null };

class Links {
  readonly #links = new Map<string, Link>();
  readonly #breaks: ReadonlyMap<string, readonly Finding[]>;

  constructor(
    private readonly ready: PreparedModel,
    private readonly bare: Situation,
    added: readonly string[],
  ) {
    const all = withItems(bare, added);
    this.#breaks = new Map(added.map((item) => [item, findingsIn(ready, withoutItems(all, [item]))]));
    for (let open = added; open.length > 0; ) {
      const linked = this.#round(open, withoutItems(all, open));
      if (linked.length === 0) break;
      for (const [item, link] of linked) this.#links.set(item, link);
      open = open.filter((item) => !this.#links.has(item));
    }
  }

  chainFrom(item: string): Reason["chain"] {
    const first = this.#links.get(item);
    if (!first) return [];
    const further: Step[] = [];
    for (let next = first.next; next !== null; ) {
      const link = this.#links.get(next);
      if (!link) break;
      further.push(link.step);
      next = link.next;
    }
    return [first.step, ...further];
  }

  /** Items whose reason needs no other open item; else one with some such reason; else where a circle is entered. */
  #round(open: readonly string[], without: Situation): readonly (readonly [string, Link])[] {
    const isKnown = (id: string): boolean => this.bare.selected.has(id) || this.#links.has(id);
    const reasons = open.flatMap((item) =>
      (this.#breaks.get(item) ?? []).map((finding) => ({ item, finding })),
    );
    const sure = reasons.filter(({ finding }) => finding.items.every(isKnown));
    if (sure.length > 0) return sure.toReversed().map((each) => this.#link(each.item, each.finding));
    const some = reasons.find(({ finding }) => finding.items.some(isKnown));
    if (some) return [this.#link(some.item, some.finding)];
    return this.#enterCircle(open, without);
  }

  #enterCircle(open: readonly string[], without: Situation): readonly (readonly [string, Link])[] {
    for (const finding of findingsIn(this.ready, without)) {
      const concerned = this.ready.constraints.find(({ id }) => id === finding.rule)?.concerns ?? [];
      const items = open.filter((item) => concerned.includes(item));
      const mends = items.find((item) => !this.#isBroken(finding, withItems(without, [item])));
      const entered = mends ?? items[0];
      if (entered !== undefined) return [this.#link(entered, finding)];
    }
    return [];
  }

  #isBroken({ rule }: Finding, in_: Situation): boolean {
    return findingsIn(this.ready, in_).some((finding) => finding.rule === rule);
  }

  #link(item: string, { rule, because, items }: Finding): readonly [string, Link] {
    const isChosen = items.some((id) => this.bare.selected.has(id));
    const next = isChosen ? null : (items.find((id) => this.#links.has(id)) ?? null);
    return [item, { step: { item, rule, because, causes: items }, next }];
  }
}

function withoutItems(from: Situation, removed: readonly string[]): Situation {
  const selected = new Set(from.selected);
  for (const id of removed) selected.delete(id);
  return { ...from, selected };
}
