import type { Transaction } from "@buildproof/database";

/** Stands for work that was quoted without a package, wherever a package is named. */
export const singleWork = "single-work";

/** As the figures have it: no code for single work. */
export function storedCode(code: string): string {
  return code === singleWork ? "" : code;
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
  return tx.package.findFirst({ where: { code }, select: { code: true, name: true, outcome: true } });
}
