import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { hashPassword } from "./password-hash";
import { duties, newPassword, personName } from "./person-input";
import { placeOnPlan } from "./place-on-plan";
import { refusePerson } from "./refuse-person";

/** Lets somebody new sign in, with a first password that the owner hands over. */
export const addPerson = command({
  name: "identity.add-person",
  permission: "people:write",
  input: z.strictObject({
    name: personName,
    email: z
      .string()
      .trim()
      .toLowerCase()
      .max(254, "An e-mail address has at most 254 characters.")
      .pipe(z.email("Type an e-mail address, such as kim@workshop.example.")),
    password: newPassword,
    ...duties,
  }),
  async run({ tx, workshopId, audit }, { password, ...person }) {
    if (await tx.person.findFirst({ where: { email: person.email } })) return refusePerson("email-taken");
    if (await tx.person.findFirst({ where: { name: { equals: person.name, mode: "insensitive" } } }))
      return refusePerson("name-taken");
    const id = newId();
    await tx.person.create({
      data: { id, workshopId, ...person, passwordHash: await hashPassword(password) },
    });
    await placeOnPlan(tx, { id, workshopId, ...person });
    audit({ entity: "person", entityId: id, after: person });
    return ok({ personId: id, name: person.name });
  },
});
