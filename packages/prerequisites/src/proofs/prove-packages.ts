import type { PackageToProve, ProofFinding } from "./catalogue-proof";
import type { Prover } from "./prover";

/** Packages that cannot be built, and options and choices of the others that cannot be taken. */
export async function provePackages(
  prover: Prover,
  packages: readonly PackageToProve[],
): Promise<readonly ProofFinding[]> {
  const findings: ProofFinding[] = [];
  for (const each of packages) findings.push(...(await provePackage(prover, each)));
  return findings;
}

/** The items that a package leaves to the customer. */
export function openItems({ choices = [], options = [] }: PackageToProve): readonly string[] {
  return [...new Set([...choices.flatMap(({ items }) => items), ...options])];
}

async function provePackage(prover: Prover, sold: PackageToProve): Promise<readonly ProofFinding[]> {
  const { id, items, choices } = sold;
  const barred = new Set(prover.barred);
  const notFitting = items.filter((item) => barred.has(item));
  if (notFitting.length > 0) return [{ kind: "package-never", package: id, notFitting, clash: null }];
  const question = { groups: choices, chosen: items };
  const { status } = await prover.ask(question);
  if (status === "unsettled") return [{ kind: "unsettled", question: { about: "package", id } }];
  if (status === "impossible") {
    return [{ kind: "package-never", package: id, notFitting: [], clash: await prover.clash(question) }];
  }
  const findings: ProofFinding[] = [];
  for (const item of openItems(sold)) {
    if (barred.has(item)) {
      findings.push({ kind: "option-never", package: id, item, clash: null });
      continue;
    }
    const taken = { ...question, chosen: [...new Set([...items, item])] };
    const answer = await prover.ask(taken);
    if (answer.status === "unsettled") {
      findings.push({ kind: "unsettled", question: { about: "option", id, item } });
    }
    if (answer.status !== "impossible") continue;
    findings.push({ kind: "option-never", package: id, item, clash: await prover.clash(taken) });
  }
  return findings;
}
