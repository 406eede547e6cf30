import { z } from "zod";
import { readCheckedBuild } from "../../builds/read-build-sheet";
import { newId } from "../../core/new-id";
import { ok } from "../../core/result";
import { readSite } from "../../core/site";
import { command, query } from "../../core/use-case";
import { catalogueOfState } from "../catalogue-of-state";
import { withChanges } from "../catalogue-state";
import { readCatalogueState } from "../read-catalogue-state";
import { readVersion } from "../read-version";
import { refuseCatalogue } from "../refuse-catalogue";
import { type OpenBuild, openBuilds } from "./open-builds";
import { type TriedDifference, triedDifference, triedFindings } from "./try-findings";
import { trySentences } from "./try-sentences";

/** More are not waited for: the samples come first, then quotes, then what is not quoted yet. */
const MOST_TRIED = 80;

/** Whoever waits has the rest told by number: a slow machine answers in time too. */
const WITHIN_MS = 6_000;

export type TriedBuild = OpenBuild & TriedDifference;

/** A draft tried on sample builds, open quotes and builds: what each would gain, lose and cost. Changes nothing. */
export const tryVersion = query({
  name: "catalogue.try-version",
  permission: "catalogue:read",
  input: z.strictObject({ versionId: z.uuid("Open the draft again.") }),
  async run({ tx, now }, { versionId }) {
    const version = await readVersion(tx, versionId);
    if (!version) return refuseCatalogue("version-not-found");
    if (version.number !== null) return refuseCatalogue("version-published", { number: version.number });
    const state = await readCatalogueState(tx);
    const standing = catalogueOfState(state);
    const drafted = catalogueOfState(withChanges(state, version.changes));
    const { builds, more } = await openBuilds(tx, MOST_TRIED);
    const differing: TriedBuild[] = [];
    const until = performance.now() + WITHIN_MS;
    let tried = 0;
    for (const build of builds) {
      if (performance.now() > until) break;
      tried += 1;
      const before = await readCheckedBuild(tx, build.id, now, standing);
      const after = await readCheckedBuild(tx, build.id, now, drafted);
      const difference = before && after && triedDifference(triedFindings(before), triedFindings(after));
      if (difference) differing.push({ ...build, ...difference });
    }
    const { currency } = await readSite(tx);
    const samples = builds.filter(({ is }) => is === "sample");
    return ok({
      differing,
      sentences: trySentences(differing, currency),
      tried,
      notTried: more + builds.length - tried,
      samples: samples.map(({ id, number, customer, vehicle }) => ({ id, number, customer, vehicle })),
      currency,
    });
  },
});

/** Keeps a build as a sample that every change of the catalogue is tried on, or lets it go again. */
export const markSample = command({
  name: "catalogue.mark-sample",
  permission: "catalogue:write",
  input: z.strictObject({
    number: z.number("Give the number of the build.").int().min(1, "Give the number of the build."),
    isSample: z.boolean(),
  }),
  async run({ tx, workshopId, person, now, audit }, { number, isSample }) {
    const build = await tx.build.findFirst({ where: { number }, include: { sampleBuilds: true } });
    if (!build) return refuseCatalogue("no-such-build", { number });
    const was = build.sampleBuilds.length > 0;
    if (was === isSample) return refuseCatalogue(was ? "sample-already" : "sample-not", { number });
    if (isSample)
      await tx.sampleBuild.create({
        data: { id: newId(), workshopId, buildId: build.id, markedById: person.id, markedAt: now },
      });
    else await tx.sampleBuild.deleteMany({ where: { buildId: build.id } });
    audit({ entity: "build", entityId: build.id, before: { sample: was }, after: { sample: isSample } });
    return ok({ number });
  },
});
