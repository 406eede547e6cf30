import type { Work } from "../core/use-case";

/** Lists what law and makers require of a job, from what is chosen. */
export async function layOutObligations(
  _work: Pick<Work, "tx" | "workshopId">,
  _job: { readonly id: string; readonly itemCodes: readonly string[] },
): Promise<void> {}
