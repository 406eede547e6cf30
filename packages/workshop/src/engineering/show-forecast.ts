import { z } from "zod";
import { refuseBuild } from "../builds/build-refusals";
import { readCheckedBuild } from "../builds/read-build-sheet";
import { ok } from "../core/result";
import { query } from "../core/use-case";

/** What a build will make, with its band, what limits it and every assumption. */
export const showForecast = query({
  name: "engineering.forecast",
  permission: "builds:read",
  input: z.strictObject({ buildId: z.uuid("Open the build from the list.") }),
  async run({ tx, now }, { buildId }) {
    const sheet = await readCheckedBuild(tx, buildId, now);
    if (!sheet) return refuseBuild("build-not-found");
    return ok(sheet.forecast);
  },
});
