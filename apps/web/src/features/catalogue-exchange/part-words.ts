import type { PartKind } from "@buildproof/workshop";

/** What the parts of the catalogue are called, several of them. */
export const partWords: Readonly<Record<PartKind, string>> = {
  item: "Items",
  group: "Groups",
  rule: "Rules",
  package: "Packages",
  operation: "Operations",
  access: "Access work",
};
