import { z } from "zod";
import { ok, refusals } from "../core/result";
import { command } from "../core/use-case";

const refuseSite = refusals({
  "site-not-found": () => "There is no such site in this workshop. Open the settings again.",
  stale: () =>
    "Somebody has changed the site meanwhile. What you typed is kept: compare it with what stands now and save again.",
});

const hotDay = z
  .number("Type the temperature as a number.")
  .min(-20, "A hot day lies between −20 and 60 °C.")
  .max(60, "A hot day lies between −20 and 60 °C.");
const altitude = z
  .int("Type the altitude as a whole number of metres.")
  .min(-400, "A site lies between −400 and 4,500 m above the sea.")
  .max(4_500, "A site lies between −400 and 4,500 m above the sea.");

/** Puts right the hot day and the altitude that every forecast of the site is told for. */
export const changeSite = command({
  name: "sites.change",
  permission: "settings:write",
  input: z.strictObject({
    siteId: z.uuid("Open the settings again."),
    designAmbientC: hotDay,
    altitudeM: altitude,
    /** As they were shown, so that nobody overwrites what was not seen. */
    seen: z.strictObject({ designAmbientC: z.number(), altitudeM: z.number() }),
  }),
  async run({ tx, audit }, { siteId, designAmbientC, altitudeM, seen }) {
    const site = await tx.site.findUnique({ where: { id: siteId }, select: { name: true } });
    if (!site) return refuseSite("site-not-found");
    const after = { designAmbientC, altitudeM };
    const { count } = await tx.site.updateMany({ where: { id: siteId, ...seen }, data: after });
    if (count === 0) return refuseSite("stale");
    audit({ entity: "site", entityId: siteId, before: seen, after });
    return ok({ name: site.name, ...after });
  },
});
