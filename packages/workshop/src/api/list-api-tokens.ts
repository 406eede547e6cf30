import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";

/** The workshop's tokens, the newest first; revoked ones stay in the list. */
export const listApiTokens = query({
  name: "api.list-tokens",
  permission: "settings:write",
  input: z.strictObject({}),
  async run({ tx }) {
    return ok(
      await tx.apiToken.findMany({
        select: { id: true, name: true, createdAt: true, lastUsedAt: true, revokedAt: true },
        orderBy: { createdAt: "desc" },
      }),
    );
  },
});
