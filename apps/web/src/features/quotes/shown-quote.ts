import type { showQuote, UseCase } from "@buildproof/workshop";

type ValueOf<Case> = Case extends UseCase<infer _Schema, infer Value> ? Value : never;

/** A quote as the use case shows it to the workshop. */
export type ShownQuote = ValueOf<typeof showQuote>;
