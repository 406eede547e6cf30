import type { CatalogueState } from "./catalogue-state";
import type { PartChange } from "./part-content";

/** What the parts of a catalogue are called; a code that nobody knows stands for itself. */
export type CatalogueNames = {
  item(code: string): string;
  operation(code: string): string;
  access(code: string): string;
  model(code: string): string;
};

type Named = { readonly name: string };

/** Names from the catalogue as it stands, from what is no longer sold, and from changes that are only drafted. */
export function catalogueNames(
  { parts, retired }: CatalogueState,
  models: ReadonlyMap<string, string>,
  changes: readonly PartChange[] = [],
): CatalogueNames {
  const drafted = (part: PartChange["part"], code: string) => {
    const change = changes.find((each) => each.part === part && each.code === code);
    const content = change?.after ?? change?.before;
    return content && "name" in content ? content.name : undefined;
  };
  const nameOf =
    (part: PartChange["part"], ...known: readonly ReadonlyMap<string, Named>[]) =>
    (code: string) => {
      for (const map of known) {
        const found = map.get(code);
        if (found) return found.name;
      }
      return drafted(part, code) ?? code;
    };
  return {
    item: nameOf("item", parts.item, retired),
    operation: nameOf("operation", parts.operation),
    access: nameOf("access", parts.access),
    model: (code) => models.get(code) ?? code,
  };
}
