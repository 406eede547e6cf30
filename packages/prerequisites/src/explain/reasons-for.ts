import type { Finding } from "../check/finding";
import { findingsIn } from "../check/findings-in";
import type { CompletionQuestion } from "../complete/completion-question";
import { checkChoice } from "../model/check-ids";
import { type DerivedItem, derivedFrom, sourcesOf } from "../model/derived-item";
import { NO_FACTS } from "../model/model";
import { prepare } from "../model/prepare";
import { situation } from "../model/situation";
import { withDerived } from "../model/with-derived";
import type { Reason, Step } from "./reason";

type Question = Omit<CompletionQuestion, "minimise" | "barred">;

/**
 * For each added item the chain of reasons back to a choice: the rule that breaks without it, the item that brings
 * the rule about, the rule that breaks without that, and so on. Items that hold each other in a circle are
 * entered where something outside asks for one of them. What is derived stands for what it comes from.
 *
 * @throws ImpossibleInputError for an unknown or doubled id.
 */
export function reasonsFor(question: Question, added: readonly string[]): readonly Reason[] {
  const links = new Links(question, added);
  return added.map((item) => ({ item, chain: links.chainFrom(item) }));
}

type Link = { readonly step: Step; readonly next: string | null };

class Links {
  readonly #links = new Map<string, Link>();
  readonly #chosen: ReadonlySet<string>;
  readonly #findingsWith: (selected: readonly string[]) => readonly Finding[];
  readonly #breaks: ReadonlyMap<string, readonly Finding[]>;
  readonly #concerns: (rule: string) => readonly string[];

  constructor({ model, chosen = [], facts = NO_FACTS, derived = [] }: Question, added: readonly string[]) {
    const ready = prepare(withDerived(model, derived));
    checkChoice(new Set(model.items.map(({ id }) => id)), [...chosen, ...added], []);
    this.#chosen = new Set(chosen);
    const sources = sourcesAmongItems(derived);
    this.#findingsWith = (selected) => {
      const selectedToo = situation([...selected, ...derivedFrom(derived, selected)], facts);
      return findingsIn(ready, selectedToo).map((finding) => ({
        ...finding,
        items: [
          ...new Set(finding.items.flatMap((id) => sources(id).filter((each) => selected.includes(each)))),
        ],
      }));
    };
    this.#concerns = (rule) =>
      ready.constraints.find(({ id }) => id === rule)?.concerns.flatMap(sources) ?? [];
    const all = [...chosen, ...added];
    this.#breaks = new Map(added.map((item) => [item, this.#findingsWith(without(all, [item]))]));
    for (let open = added; open.length > 0; ) {
      const linked = this.#round(open, without(all, open));
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
  #round(open: readonly string[], rest: readonly string[]): readonly (readonly [string, Link])[] {
    const isKnown = (id: string): boolean => this.#chosen.has(id) || this.#links.has(id);
    const reasons = open.flatMap((item) =>
      (this.#breaks.get(item) ?? []).map((finding) => ({ item, finding })),
    );
    const sure = reasons.filter(({ finding }) => finding.items.every(isKnown));
    if (sure.length > 0) return sure.toReversed().map((each) => this.#link(each.item, each.finding));
    const some = reasons.find(({ finding }) => finding.items.some(isKnown));
    if (some) return [this.#link(some.item, some.finding)];
    return this.#enterCircle(open, rest);
  }

  #enterCircle(open: readonly string[], rest: readonly string[]): readonly (readonly [string, Link])[] {
    for (const finding of this.#findingsWith(rest)) {
      const concerned = new Set(this.#concerns(finding.rule));
      const items = open.filter((item) => concerned.has(item));
      const mends = items.find((item) => !this.#isBroken(finding, [...rest, item]));
      const entered = mends ?? items[0];
      if (entered !== undefined) return [this.#link(entered, finding)];
    }
    return [];
  }

  #isBroken({ rule }: Finding, selected: readonly string[]): boolean {
    return this.#findingsWith(selected).some((finding) => finding.rule === rule);
  }

  #link(item: string, { rule, because, items }: Finding): readonly [string, Link] {
    const isChosen = items.some((id) => this.#chosen.has(id));
    const next = isChosen ? null : (items.find((id) => this.#links.has(id)) ?? null);
    return [item, { step: { item, rule, because, causes: items }, next }];
  }
}

function without(all: readonly string[], removed: readonly string[]): readonly string[] {
  return all.filter((id) => !removed.includes(id));
}

/** An item itself, or the items that a derived one comes from in the end. */
function sourcesAmongItems(derived: readonly DerivedItem[]): (id: string) => readonly string[] {
  const byId = new Map(derived.map((each) => [each.id, each]));
  const sources = (id: string): readonly string[] => {
    const each = byId.get(id);
    return each ? [...new Set(sourcesOf(each).flatMap(sources))] : [id];
  };
  return sources;
}
