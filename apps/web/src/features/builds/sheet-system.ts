import type { ShownSheet } from "@buildproof/workshop";

/** One system of the shown sheet. */
export type SheetSystem = ShownSheet["systems"][number];
