import type { Transaction } from "@buildproof/database";
import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { lockOtherOwners } from "./lock-owners";
import { duties } from "./person-input";
import { placeOnPlan } from "./place-on-plan";
import { refusePerson } from "./refuse-person";

/** Sets roles and skills, and whether the person may sign in at all; who may not is signed out at once. */
export const changePerson = command({
  name: "identity.change-person",
  permission: "people:write",
  input: z.strictObject({
    personId: z.uuid("Open the person from the list."),
    ...duties,
    active: z.boolean(),
  }),
  async run({ tx, workshopId, audit }, { personId, roles, skills, active }) {
    const before = await tx.person.findUnique({ where: { id: personId } });
    if (!before) return refusePerson("person-not-found");
    const staysOwner = active && roles.includes("owner");
    if (!staysOwner && (await lockOtherOwners(tx, personId)) === 0) return refusePerson("last-owner");
    const leaves = before.active && !active;
    const clock = leaves ? await runningClock(tx, personId) : null;
    if (clock) return refusePerson("clock-running", { name: before.name, job: clock.job.number });
    await tx.person.update({
      where: { id: personId },
      data: { roles, skills, active, ...(leaves ? { sessionCounter: { increment: 1 } } : {}) },
    });
    await placeOnPlan(tx, { id: personId, workshopId, name: before.name, roles });
    audit({
      entity: "person",
      entityId: personId,
      before: { roles: before.roles, skills: before.skills, active: before.active },
      after: { roles, skills, active },
    });
    return ok({ name: before.name });
  },
});

function runningClock(tx: Transaction, personId: string) {
  return tx.clockEntry.findFirst({ where: { personId, stoppedAt: null }, include: { job: true } });
}
