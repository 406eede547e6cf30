import { type OwnerPeriod, ownerPeriods } from "@buildproof/workshop";

export const periodWords: Record<OwnerPeriod, string> = {
  "90-days": "the last 90 days",
  "12-months": "the last 12 months",
  all: "all time",
};

export const usualPeriod: OwnerPeriod = "12-months";

/** The period an address asks for; the usual one when it asks for none that exists. */
export function periodAt(asked: string | string[] | undefined): OwnerPeriod {
  return ownerPeriods.find((period) => period === asked) ?? usualPeriod;
}

/** The address of an owner's page over a period. */
export function over(path: string, period: OwnerPeriod): string {
  return period === usualPeriod ? path : `${path}?period=${period}`;
}
