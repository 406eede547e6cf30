import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { refusePerson } from "./refuse-person";

/** One person of the workshop, for the owner to change. */
export const getPerson = query({
  name: "identity.get-person",
  permission: "people:write",
  input: z.strictObject({ personId: z.string() }),
  async run({ tx, person: me }, { personId }) {
    const row = z.uuid().safeParse(personId).success
      ? await tx.person.findUnique({ where: { id: personId } })
      : null;
    if (!row) return refusePerson("person-not-found");
    const { id, name, email, roles, skills, active, createdAt } = row;
    return ok({ id, name, email, roles, skills, active, createdAt, isMe: id === me.id });
  },
});
