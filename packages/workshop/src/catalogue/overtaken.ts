import { isDeepStrictEqual } from "node:util";
import type { CatalogueState } from "./catalogue-state";
import type { PartChange } from "./part-content";

/**
 * The changes of a draft whose part became another one since: each from what the draft began with to what is
 * there now.
 */
export function overtakenChanges(
  state: CatalogueState,
  changes: readonly PartChange[],
): readonly PartChange[] {
  return changes.flatMap((change) => {
    const standing = state.parts[change.part].get(change.code) ?? null;
    if (isDeepStrictEqual(standing, change.before)) return [];
    return [{ ...change, after: standing } as PartChange]; // Standing was looked up under the same part.
  });
}
