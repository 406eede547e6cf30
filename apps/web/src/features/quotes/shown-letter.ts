import type { readLetter, UseCase } from "@buildproof/workshop";

type ValueOf<Case> = Case extends UseCase<infer _Schema, infer Value> ? Value : never;

/** What the holder of a link reads, as the use case gives it. */
export type ShownLetter = ValueOf<typeof readLetter>;
