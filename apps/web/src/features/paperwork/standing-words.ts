import type { readHandOver, ValueOf } from "@buildproof/workshop";

export type ShownObligation = ValueOf<typeof readHandOver>["obligations"][number];

/** How an obligation stands, in front of its title. */
export const standingWords: Readonly<Record<ShownObligation["standing"], string>> = {
  met: "Met:",
  "open-safety": "Open, safety:",
  open: "Open:",
  "at-the-keys": "At the keys:",
  "to-confirm": "To confirm:",
};
