import type { Transaction } from "@buildproof/database";
import type { ResourceKind } from "./work-block";

export type ResourceChoice = {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: string;
  /** Rated load, or what the person is able to do. */
  readonly note: string;
};

/** What can be booked, in the order that the manager keeps. */
export async function resourceChoices(tx: Transaction): Promise<readonly ResourceChoice[]> {
  const rows = await tx.resource.findMany({
    orderBy: [{ position: "asc" }, { name: "asc" }],
    include: { person: { select: { active: true, skills: true } } },
  });
  return rows
    .filter(({ person }) => person?.active !== false)
    .map(({ id, kind, name, maxMassKg, person }) => ({ id, kind, name, note: noteOf(maxMassKg, person) }));
}

function noteOf(maxMassKg: number | null, person: { readonly skills: readonly string[] } | null): string {
  if (person) return person.skills.map((skill) => skill.replaceAll("-", " ")).join(", ");
  return maxMassKg === null ? "" : `rated ${maxMassKg.toLocaleString("en-AU")} kg`;
}
