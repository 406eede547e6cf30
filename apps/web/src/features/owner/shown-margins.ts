import type { jobMargin, marginsByPackage, packageMargin, packageStep, UseCase } from "@buildproof/workshop";

type ValueOf<Case> = Case extends UseCase<infer _, infer Value> ? Value : never;

export type ShownMargins = ValueOf<typeof marginsByPackage>;
export type ShownPackage = ValueOf<typeof packageMargin>;
export type ShownStep = ValueOf<typeof packageStep>;
export type ShownJob = ValueOf<typeof jobMargin>;
