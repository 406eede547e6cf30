import { clingoSearch } from "@buildproof/prerequisites/solver";
import { z } from "zod";
import type { Context } from "../core/context";
import { perform } from "../core/perform";
import { ok, type Result } from "../core/result";
import { query } from "../core/use-case";
import { alternativesOf, type BuildAlternatives } from "./alternatives";
import { refuseBuild } from "./build-refusals";
import { readCheckedBuild } from "./read-build-sheet";

/** Long enough for a catalogue of hundreds; whoever waits sees the sheet meanwhile. */
const WITHIN_MS = 5_000;

/** Reads the build that alternatives are sought for; the search itself holds no transaction. */
export const readForAlternatives = query({
  name: "builds.alternatives",
  permission: "builds:read",
  input: z.strictObject({ buildId: z.uuid("Open the build from the list.") }),
  async run({ tx, now }, { buildId }) {
    const sheet = await readCheckedBuild(tx, buildId, now);
    return sheet ? ok(sheet) : refuseBuild("build-not-found");
  },
});

/**
 * The cheapest, the quickest and the soonest way to complete a build, or why there is none. The search runs in a
 * worker of its own, within a few seconds, and ends when nobody waits for it any more.
 */
export async function findAlternatives(
  context: Context,
  input: { readonly buildId: string },
  cancelled: AbortSignal,
): Promise<Result<BuildAlternatives & { readonly revision: number }>> {
  const read = await perform(context, readForAlternatives, input);
  if (!read.ok) return read;
  const found = await alternativesOf(read.value, clingoSearch(WITHIN_MS, cancelled));
  return ok({ ...found, revision: read.value.revision });
}
