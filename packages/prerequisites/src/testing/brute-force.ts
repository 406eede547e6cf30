import { checkPrerequisites } from "../check/check-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";
import { derivedFrom } from "../model/derived-item";
import { withDerived } from "../model/with-derived";

/** The best completion of a small question by looking at every selection; null when there is none. */
export function bruteForce(question: CompletionQuestion): readonly string[] | null {
  const { model, chosen = [], barred = [], facts = {}, derived = [], minimise = "price" } = question;
  const whole = withDerived(model, derived);
  const along = new Set(derivedFrom(derived, chosen));
  const free = model.items.filter(({ id }) => !chosen.includes(id) && !barred.includes(id));
  let best: { readonly ids: readonly string[]; readonly rank: readonly number[] } | null = null;
  for (let set = 0; set < 2 ** free.length; set += 1) {
    const added = free.filter((_, at) => (set >> at) & 1);
    const ids = added.map(({ id }) => id);
    const selected = [...chosen, ...ids];
    const came = new Set(derivedFrom(derived, selected));
    if (!checkPrerequisites(whole, [...selected, ...came], facts).ok) continue;
    const paid = [...added, ...derived.filter(({ id }) => came.has(id) && !along.has(id))];
    const price = paid.reduce((sum, item) => sum + Number(item.price ?? 0), 0);
    const hours = paid.reduce((sum, item) => sum + Number(item.hours ?? 0), 0);
    const leadDays = paid.reduce((most, item) => Math.max(most, Number(item.leadDays ?? 0)), 0);
    const asked = { price, hours, leadDays }[minimise];
    // The first place where two sets of equal size differ: who has the earlier item comes first.
    const order = free.map((_, at) => ((set >> at) & 1 ? 0 : 1));
    const rank = [asked, price, hours, leadDays, ids.length, ...order];
    if (!best || comesBefore(rank, best.rank)) best = { ids, rank };
  }
  return best?.ids ?? null;
}

function comesBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, place) => value !== b[place]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
