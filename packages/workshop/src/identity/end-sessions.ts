import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refusePerson } from "./refuse-person";

/** Ends every session of a person: a tablet was lost, or somebody has left. */
export const endSessions = command({
  name: "identity.end-sessions",
  permission: "people:write",
  input: z.strictObject({ personId: z.uuid("Open the person from the list.") }),
  async run({ tx, audit }, { personId }) {
    const person = await tx.person.findUnique({ where: { id: personId } });
    if (!person) return refusePerson("person-not-found");
    await tx.person.update({ where: { id: personId }, data: { sessionCounter: { increment: 1 } } });
    audit({ entity: "person", entityId: personId, after: { sessionsEnded: true } });
    return ok({ name: person.name });
  },
});
