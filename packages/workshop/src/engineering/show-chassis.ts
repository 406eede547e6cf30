import { z } from "zod";
import { refuseBuild } from "../builds/build-refusals";
import { readCheckedBuild } from "../builds/read-build-sheet";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { chassisOfSheet } from "./chassis-of-sheet";

/** What a build does to the vehicle's tyres, gearing, speedometer, masses, towing and acceleration. */
export const showChassis = query({
  name: "engineering.chassis",
  permission: "builds:read",
  input: z.strictObject({ buildId: z.uuid("Open the build from the list.") }),
  async run({ tx, now }, { buildId }) {
    const sheet = await readCheckedBuild(tx, buildId, now);
    if (!sheet) return refuseBuild("build-not-found");
    return ok(chassisOfSheet(sheet));
  },
});
