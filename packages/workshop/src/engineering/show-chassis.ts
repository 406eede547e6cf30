import { z } from "zod";
import { refuseBuild } from "../builds/build-refusals";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { chassisOf } from "./chassis-of";
import { readChassisBuild } from "./read-chassis-build";

/** What a build does to the vehicle's tyres, gearing, speedometer, masses and towing. */
export const showChassis = query({
  name: "engineering.chassis",
  permission: "builds:read",
  input: z.strictObject({ buildId: z.uuid("Open the build from the list.") }),
  async run({ tx }, { buildId }) {
    const build = await readChassisBuild(tx, buildId);
    if (!build) return refuseBuild("build-not-found");
    return ok(chassisOf(build));
  },
});
