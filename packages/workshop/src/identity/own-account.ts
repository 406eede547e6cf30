import { z } from "zod";
import { ok, refusals } from "../core/result";
import { command, query } from "../core/use-case";
import { hashPassword, passwordMatches } from "./password-hash";

const refuse = refusals({
  "password-wrong": () => "The present password is not right. Type it again.",
  "password-same": () => "The new password is the present one. Choose another.",
});

/** Who I am, as the top of every screen shows it. */
export const whoAmI = query({
  name: "identity.who-am-i",
  permission: "own-account",
  input: z.strictObject({}),
  async run({ tx, person, workshopId }) {
    const workshop = await tx.workshop.findUniqueOrThrow({ where: { id: workshopId } });
    const site = await tx.site.findFirstOrThrow({ orderBy: { name: "asc" } });
    return ok({ ...person, workshopName: workshop.name, timeZone: site.timeZone, currency: site.currency });
  },
});

/** Ends every session of the acting person, this one too. */
export const signOutEverywhere = command({
  name: "identity.sign-out-everywhere",
  permission: "own-account",
  input: z.strictObject({}),
  async run({ tx, person, audit }) {
    await tx.person.update({ where: { id: person.id }, data: { sessionCounter: { increment: 1 } } });
    audit({ entity: "person", entityId: person.id, after: { signedOutEverywhere: true } });
    return ok(null);
  },
});

/** Sets a new password and ends every session under the old one. Answers the new session count. */
export const changePassword = command({
  name: "identity.change-password",
  permission: "own-account",
  input: z.strictObject({
    present: z.string().min(1, "Type the present password.").max(200),
    next: z
      .string()
      .min(12, "A password has at least 12 characters.")
      .max(200, "A password has at most 200 characters."),
  }),
  async run({ tx, person, audit }, { present, next }) {
    const row = await tx.person.findUniqueOrThrow({ where: { id: person.id } });
    if (!(await passwordMatches(present, row.passwordHash))) return refuse("password-wrong");
    if (present === next) return refuse("password-same");
    const { sessionCounter } = await tx.person.update({
      where: { id: person.id },
      data: { passwordHash: await hashPassword(next), sessionCounter: { increment: 1 } },
    });
    audit({ entity: "person", entityId: person.id, after: { passwordChanged: true } });
    return ok({ sessionCounter });
  },
});
