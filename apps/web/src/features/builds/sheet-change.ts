import type { ItemsChanged } from "@buildproof/workshop";

/** One thing that somebody does to a build sheet. */
export type SheetChange =
  | {
      readonly kind: "items";
      readonly set: readonly { readonly code: string; readonly quantity: number }[];
      readonly remove: readonly string[];
      readonly packageCode?: string | null;
    }
  | { readonly kind: "package"; readonly packageCode: string | null; readonly picked: readonly string[] };

export function adding(codes: readonly string[]): SheetChange {
  return { kind: "items", set: codes.map((code) => ({ code, quantity: 1 })), remove: [] };
}

export function removing(codes: readonly string[]): SheetChange {
  return { kind: "items", set: [], remove: codes };
}

/** The step that takes a step back. */
export function takingBack(undo: ItemsChanged["undo"]): SheetChange {
  return { kind: "items", ...undo };
}
