import type { PreparedModel } from "../model/prepare";
import type { Situation } from "../model/situation";

export type Because = { readonly item: string; readonly rules: readonly string[] };

/** For each added item the groups and rules that break when it alone is taken out. */
export function becauseOf(
  ready: PreparedModel,
  selected: Situation,
  added: readonly string[],
): readonly Because[] {
  return added.map((item) => {
    const without = new Set(selected.selected);
    without.delete(item);
    const situation = { ...selected, selected: without };
    const concerned = (ready.concerning.get(item) ?? []).flatMap((at) => ready.constraints[at] ?? []);
    const broken = concerned.filter(({ findingIn }) => findingIn(situation));
    return { item, rules: broken.map(({ id }) => id) };
  });
}
