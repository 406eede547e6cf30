import { derivedFrom } from "../model/derived-item";
import type { Problem } from "./problem";

export type Because = { readonly item: string; readonly rules: readonly string[] };

/** For each added item the groups and rules that break when it alone is taken out, with what it brings along. */
export function becauseOf(
  problem: Problem,
  chosen: readonly string[],
  added: readonly string[],
): readonly Because[] {
  const { ready, bare, derived } = problem;
  const all = new Set([...chosen, ...added]);
  const along = derivedFrom(derived, all);
  const selected = new Set([...all, ...along]);
  const situation = { ...bare, selected };
  return added.map((item) => {
    all.delete(item);
    const staying = derivedFrom(derived, all);
    all.add(item);
    const gone = [item, ...along.filter((id) => !staying.includes(id))];
    for (const id of gone) selected.delete(id);
    const places = new Set(gone.flatMap((id) => ready.concerning.get(id) ?? []));
    const broken = [...places]
      .sort((a, b) => a - b)
      .flatMap((at) => ready.constraints[at] ?? [])
      .filter(({ findingIn }) => findingIn(situation));
    for (const id of gone) selected.add(id);
    return { item, rules: broken.map(({ id }) => id) };
  });
}
