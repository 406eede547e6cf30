import type { showDyno, showJobDyno, UseCase } from "@buildproof/workshop";

type Answer<Asked> = Asked extends UseCase<infer _Schema, infer Value> ? Value : never;

export type JobDyno = Answer<typeof showJobDyno>;
export type DynoDay = Answer<typeof showDyno>;
