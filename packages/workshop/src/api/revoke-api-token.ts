import { z } from "zod";
import { ok } from "../core/result";
import { command } from "../core/use-case";
import { refuseApi } from "./refuse-api";

/** Closes a token for good. Revoking it twice is revoking it once. */
export const revokeApiToken = command({
  name: "api.revoke-token",
  permission: "settings:write",
  input: z.strictObject({ tokenId: z.uuid("Choose the token from the list.") }),
  async run({ tx, now, audit }, { tokenId }) {
    const token = await tx.apiToken.findUnique({ where: { id: tokenId } });
    if (!token) return refuseApi("token-not-found");
    if (token.revokedAt) return ok({ name: token.name });
    await tx.apiToken.update({ where: { id: tokenId }, data: { revokedAt: now } });
    audit({ entity: "api-token", entityId: tokenId, after: { revokedAt: now } });
    return ok({ name: token.name });
  },
});
