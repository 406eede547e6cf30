import type { Chooser, PackageToProve, ProofFinding } from "./catalogue-proof";
import { proveForced } from "./prove-forced";
import type { Prover, Question } from "./prover";

/** What every build has, then what each package and each item brings along beyond that. */
export async function proveChoices(
  prover: Prover,
  packages: readonly PackageToProve[],
  items: readonly string[],
): Promise<readonly ProofFinding[]> {
  const always = await proveForced(prover, null, {});
  const findings = [...always];
  const add = async (by: Chooser, question: Question): Promise<void> => {
    for (const found of await proveForced(prover, by, question)) {
      const news = beyond(found, always);
      if (news) findings.push(news);
    }
  };
  for (const { id, items: chosen, choices } of packages) {
    await add({ package: id }, { chosen, groups: choices });
  }
  for (const id of items) await add({ item: id }, { chosen: [id] });
  return findings;
}

/** What is so for every build is not said again of each choice. */
function beyond(found: ProofFinding, always: readonly ProofFinding[]): ProofFinding | null {
  if (found.kind === "forces") {
    const known = new Set(always.flatMap((each) => (each.kind === "forces" ? each.items : [])));
    const items = found.items.filter((id) => !known.has(id));
    return items.length > 0 ? { ...found, items } : null;
  }
  if (found.kind !== "only-at-least" && found.kind !== "only-below") return found;
  const isKnown = always.some(
    (each) => each.kind === found.kind && each.fact === found.fact && each.value === found.value,
  );
  return isKnown ? null : found;
}
