import { z } from "zod";
import { ok } from "../core/result";
import { readSite } from "../core/site";
import { query } from "../core/use-case";

/** What of the site's place the engineering uses. */
export const showSite = query({
  name: "sites.show",
  permission: "settings:write",
  input: z.strictObject({}),
  async run({ tx }) {
    const { id, name, designAmbientC, altitudeM } = await readSite(tx);
    return ok({ id, name, designAmbientC, altitudeM });
  },
});
