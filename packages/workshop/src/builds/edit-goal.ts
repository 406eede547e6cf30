import { z } from "zod";
import { atField } from "../core/at-field";
import { ok } from "../core/result";
import { revision } from "../core/revision";
import { readSite } from "../core/site";
import { dateInZone, isoDateOf, storedDate } from "../core/site-date";
import { command } from "../core/use-case";
import { goal, wantedBy } from "./build-fields";
import { refuseBuild } from "./build-refusals";

/** Changes what the owner wants and by when. */
export const editGoal = command({
  name: "builds.edit-goal",
  permission: "builds:write",
  input: z.strictObject({ buildId: z.uuid("Open the build again."), revision, goal, wantedBy }),
  async run({ tx, now, audit }, input) {
    const build = await tx.build.findUnique({ where: { id: input.buildId } });
    if (!build) return refuseBuild("build-not-found");
    const { timeZone } = await readSite(tx);
    const today = dateInZone(now, timeZone);
    const before = { goal: build.goal, wantedBy: build.wantedBy ? isoDateOf(build.wantedBy) : null };
    // A date that has passed meanwhile may stay; a new one may not lie in the past.
    if (input.wantedBy && input.wantedBy < today && input.wantedBy !== before.wantedBy)
      return atField("wantedBy", refuseBuild("wanted-by-past", { today }));
    const { count } = await tx.build.updateMany({
      where: { id: build.id, revision: input.revision },
      data: {
        goal: input.goal,
        wantedBy: input.wantedBy ? storedDate(input.wantedBy) : null,
        updatedAt: now,
        revision: { increment: 1 },
      },
    });
    if (count === 0) return refuseBuild("stale");
    audit({
      entity: "build",
      entityId: build.id,
      before,
      after: { goal: input.goal, wantedBy: input.wantedBy },
    });
    return ok({ revision: input.revision + 1 });
  },
});
