import type { CatalogueParts, ContentOf, PartChange, PartKind } from "./part-content";

/** The catalogue as it stands, or as a draft would make it. */
export type CatalogueState = {
  readonly parts: CatalogueParts;
  /** Items no longer sold, which builds may still have. */
  readonly retired: ReadonlyMap<string, ContentOf<"item">>;
  /** What the store knows of an item; an item that is only drafted is not there. */
  readonly stock: ReadonlyMap<string, { readonly id: string; readonly inStock: number }>;
};

/** The catalogue with changes made to it; what they say was before is not looked at. */
export function withChanges(state: CatalogueState, changes: readonly PartChange[]): CatalogueState {
  const of = <Part extends PartKind>(part: Part) => changed(state.parts, changes, part);
  const retired = new Map(state.retired);
  for (const change of changes) {
    if (change.part !== "item") continue;
    const sold = state.parts.item.get(change.code);
    if (change.after) retired.delete(change.code);
    else if (sold) retired.set(change.code, sold);
  }
  return {
    parts: {
      item: of("item"),
      group: of("group"),
      rule: of("rule"),
      package: of("package"),
      operation: of("operation"),
      access: of("access"),
    },
    retired,
    stock: state.stock,
  };
}

function changed<Part extends PartKind>(
  parts: CatalogueParts,
  changes: readonly PartChange[],
  part: Part,
): ReadonlyMap<string, ContentOf<Part>> {
  const map = new Map<string, ContentOf<Part>>(parts[part]);
  for (const change of changes) {
    if (change.part !== part) continue;
    const after = change.after as ContentOf<Part> | null; // The part was just compared.
    if (after) map.set(change.code, after);
    else map.delete(change.code);
  }
  return map;
}
