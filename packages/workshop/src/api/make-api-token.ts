import { z } from "zod";
import { newId } from "../core/new-id";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuseApi } from "./refuse-api";

/**
 * Lets a program of the workshop use the public calculations. The token itself is made by the caller and shown
 * once: it reaches neither the database nor a stored reply, only its hash does.
 */
export const makeApiToken = command({
  name: "api.make-token",
  permission: "settings:write",
  input: z.strictObject({
    name: z
      .string()
      .trim()
      .min(1, "Name the program that will use the token, such as Price list.")
      .max(80, "A token's name has at most 80 characters."),
    tokenHash: z.string().regex(/^[0-9a-f]{64}$/, "Make the token on the settings page."),
  }),
  async run({ tx, workshopId, person, now, audit }, { name, tokenHash }) {
    const sameName = { equals: name, mode: "insensitive" } as const;
    if (await tx.apiToken.findFirst({ where: { name: sameName, revokedAt: null } }))
      return refuseApi("token-name-taken");
    const id = newId();
    await tx.apiToken.create({
      data: { id, workshopId, name, tokenHash, createdAt: now, createdById: person.id },
    });
    audit({ entity: "api-token", entityId: id, after: { name } });
    return ok({ tokenId: id, name });
  },
});
