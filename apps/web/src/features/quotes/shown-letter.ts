import type { readLetter, ValueOf } from "@buildproof/workshop";

/** What the holder of a link reads, as the use case gives it. */
export type ShownLetter = ValueOf<typeof readLetter>;
