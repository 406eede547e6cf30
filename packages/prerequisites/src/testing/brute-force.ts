import { checkPrerequisites } from "../check/check-prerequisites";
import type { CompletionQuestion } from "../complete/completion-question";

/** The best completion of a small question by looking at every selection; null when there is none. */
export function bruteForce(question: CompletionQuestion): readonly string[] | null {
  const { model, chosen = [], barred = [], facts = {}, minimise = "price" } = question;
  const free = model.items.filter(({ id }) => !chosen.includes(id) && !barred.includes(id));
  let best: { readonly ids: readonly string[]; readonly rank: readonly number[] } | null = null;
  for (let set = 0; set < 2 ** free.length; set += 1) {
    const added = free.filter((_, at) => (set >> at) & 1);
    const ids = added.map(({ id }) => id);
    if (!checkPrerequisites(model, [...chosen, ...ids], facts).ok) continue;
    const price = added.reduce((sum, item) => sum + Number(item.price ?? 0), 0);
    const hours = added.reduce((sum, item) => sum + Number(item.hours ?? 0), 0);
    const leadDays = added.reduce((most, item) => Math.max(most, Number(item.leadDays ?? 0)), 0);
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
