import type { showQuote, ValueOf } from "@buildproof/workshop";

/** A quote as the use case shows it to the workshop. */
export type ShownQuote = ValueOf<typeof showQuote>;
