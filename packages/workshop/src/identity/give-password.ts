import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { hashPassword } from "./password-hash";
import { newPassword } from "./person-input";
import { refusePerson } from "./refuse-person";

/** Gives somebody who has lost theirs a new password, and ends the sessions under the old one. */
export const givePassword = command({
  name: "identity.give-password",
  permission: "people:write",
  input: z.strictObject({ personId: z.uuid("Open the person from the list."), password: newPassword }),
  async run({ tx, audit }, { personId, password }) {
    const person = await tx.person.findUnique({ where: { id: personId } });
    if (!person) return refusePerson("person-not-found");
    await tx.person.update({
      where: { id: personId },
      data: { passwordHash: await hashPassword(password), sessionCounter: { increment: 1 } },
    });
    audit({ entity: "person", entityId: personId, after: { passwordGiven: true } });
    return ok({ name: person.name });
  },
});
