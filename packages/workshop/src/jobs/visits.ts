import type { Transaction } from "@buildproof/database";

/**
 * A job card spans visits: the inspection comes before anything is ordered and is recorded on the build, the
 * re-torque comes weeks after the keys are handed over. What lies between is the job itself.
 */
export type Visit = "before" | "main" | "after";

type OperationRow = { readonly code: string; readonly stage: string; readonly access: readonly string[] };
type AccessRow = { readonly code: string; readonly needs: readonly string[] };

/** Which visit each operation and each piece of access work of a job card belongs to, by its code. */
export async function readVisits(
  tx: Transaction,
  codes: readonly string[],
): Promise<ReadonlyMap<string, Visit>> {
  const operations = await tx.operation.findMany({ where: { code: { in: [...codes] } } });
  const access = await tx.accessWork.findMany();
  return visitsOf(operations, access);
}

/** Access work goes with the operations that need it; where they differ it is work of the job itself. */
export function visitsOf(
  operations: readonly OperationRow[],
  access: readonly AccessRow[],
): ReadonlyMap<string, Visit> {
  const visits = new Map<string, Visit>();
  const note = (code: string, visit: Visit) => {
    const known = visits.get(code);
    visits.set(code, known === undefined || known === visit ? visit : "main");
  };
  const needed = (code: string): readonly string[] => [
    code,
    ...(access.find((piece) => piece.code === code)?.needs ?? []).flatMap(needed),
  ];
  for (const operation of operations) {
    const visit = visitOfStage(operation.stage);
    note(operation.code, visit);
    for (const code of operation.access.flatMap(needed)) note(code, visit);
  }
  return visits;
}

function visitOfStage(stage: string): Visit {
  if (stage === "inspection") return "before";
  return stage === "after" ? "after" : "main";
}
