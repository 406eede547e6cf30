import type { Transaction } from "@buildproof/database";
import type { Role } from "../core/actor";
import { newId } from "../core/new-id";

/** Whoever works on vehicles has a row on the plan; it stays when they leave, with the work that is on it. */
export async function placeOnPlan(
  tx: Transaction,
  person: {
    readonly id: string;
    readonly workshopId: string;
    readonly name: string;
    readonly roles: readonly Role[];
  },
): Promise<void> {
  const isOnFloor = person.roles.some((role) => role === "technician" || role === "manager");
  if (!isOnFloor || (await tx.resource.findFirst({ where: { personId: person.id } }))) return;
  const last = await tx.resource.aggregate({ _max: { position: true } });
  await tx.resource.create({
    data: {
      id: newId(),
      workshopId: person.workshopId,
      kind: "person",
      name: person.name,
      personId: person.id,
      position: (last._max.position ?? 0) + 1,
    },
  });
}
