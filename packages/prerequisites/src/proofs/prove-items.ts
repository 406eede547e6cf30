import type { ProofFinding } from "./catalogue-proof";
import type { Prover } from "./prover";

/** Items that fit and that no build can have. */
export async function proveItems(prover: Prover, items: readonly string[]): Promise<readonly ProofFinding[]> {
  const barred = new Set(prover.barred);
  const findings: ProofFinding[] = [];
  for (const item of items) {
    if (barred.has(item)) continue;
    const { status } = await prover.ask({ chosen: [item] });
    if (status === "unsettled") findings.push({ kind: "unsettled", question: { about: "item", id: item } });
    if (status !== "impossible") continue;
    findings.push({ kind: "item-never", item, clash: await prover.clash({ chosen: [item] }) });
  }
  return findings;
}
