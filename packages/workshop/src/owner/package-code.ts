import type { Transaction } from "@buildproof/database";

/** Stands for work that was quoted without a package, wherever a package is named. */
export const singleWork = "single-work";

/** Stands for every package and single work together. */
export const allWork = "all-work";

/** The jobs handed over since then of what a code names, as the figures ask for them. */
export function jobsUnder(
  code: string,
  since: Date,
): { readonly since: Date; readonly packageCode?: string } {
  if (code === allWork) return { since };
  return { since, packageCode: code === singleWork ? "" : code };
}

type PackageName = { readonly code: string; readonly name: string; readonly outcome: string };

export const singleWorkName: PackageName = {
  code: singleWork,
  name: "Single work",
  outcome: "Work that was quoted item by item, without a package.",
};

/** Null when the workshop has no such package. */
export async function findPackage(tx: Transaction, code: string): Promise<PackageName | null> {
  if (code === singleWork) return singleWorkName;
  if (code === allWork) return { code, name: "All work", outcome: "Every package, and work without one." };
  return tx.package.findFirst({ where: { code }, select: { code: true, name: true, outcome: true } });
}
