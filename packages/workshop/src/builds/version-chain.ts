import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { askedTorqueNm, forecastOfItems } from "../engineering/forecast-of-items";
import { readSelection } from "../quotes/stored-selection";
import { refuseBuild } from "./build-refusals";
import { capacitiesOf, checkBuild, readBuildSheet } from "./read-build-sheet";

const chainOf = z.union([
  z.strictObject({ versionId: z.uuid("Open the quote from the list.") }),
  z.strictObject({ jobId: z.uuid("Open the job from the list.") }),
]);

/**
 * Asked against given for what a version of a quote sells, or a job's accepted version: its own items, whatever
 * was changed on the build since, by the rules of today.
 */
export const versionChain = query({
  name: "builds.version-chain",
  permission: "builds:read",
  input: chainOf,
  async run({ tx, now }, asked) {
    const version = await tx.quoteVersion.findFirst({
      where: "versionId" in asked ? { id: asked.versionId } : { jobs: { some: { id: asked.jobId } } },
      select: { selection: true, quote: { select: { buildId: true } } },
    });
    const sheet = version && (await readBuildSheet(tx, version.quote.buildId, now));
    if (!version || !sheet) return refuseBuild("build-not-found");
    const { catalogue, site, vehicle, checked, forecastVehicle } = sheet;
    const known = new Set(catalogue.items.map(({ code }) => code));
    const sold = readSelection(version.selection).items.filter(({ code }) => known.has(code));
    const codes = new Set(sold.map(({ code }) => code));
    const crankTorqueNm = askedTorqueNm(forecastOfItems(forecastVehicle, catalogue.items, codes));
    const facts = { ...checked.facts, crankTorqueNm };
    return ok({
      capacities: capacitiesOf(checkBuild(catalogue, site, sold, { modelCode: vehicle.modelCode, facts })),
    });
  },
});
