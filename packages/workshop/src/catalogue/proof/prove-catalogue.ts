import { proveCatalogue, type Search } from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import { ImpossibleInputError } from "@buildproof/units";
import { z } from "zod";
import { storedFacts } from "../../builds/stored-catalogue";
import type { Context } from "../../core/context";
import { perform } from "../../core/perform";
import { ok, type Result } from "../../core/result";
import { readSite } from "../../core/site";
import { query } from "../../core/use-case";
import { catalogueOfState } from "../catalogue-of-state";
import { withChanges } from "../catalogue-state";
import { readCatalogueState } from "../read-catalogue-state";
import { readVersion } from "../read-version";
import { refuseCatalogue } from "../refuse-catalogue";
import { type ProofReport, type ProvenModel, proofReport } from "./proof-report";
import { type ModelToProve, proofSubject } from "./proof-subject";
import { proofWords } from "./proof-words";

const modelFigures = z.object({ fuelKind: z.enum(["petrol", "diesel"]).optional() });

/** Reads the catalogue as it stands, or as a draft would make it; the proof itself holds no transaction. */
export const readForProof = query({
  name: "catalogue.prove",
  permission: "catalogue:write",
  input: z.strictObject({ versionId: z.uuid("Open the draft again.").nullable() }),
  async run({ tx }, { versionId }) {
    const version = versionId === null ? null : await readVersion(tx, versionId);
    if (versionId !== null && !version) return refuseCatalogue("version-not-found");
    const state = await readCatalogueState(tx);
    const rows = await tx.vehicleModel.findMany({ orderBy: { name: "asc" } });
    const models = rows.map(({ code, name, facts, figures }): ModelToProve => {
      const burns = modelFigures.parse(figures).fuelKind ?? null;
      return { code, name, burns, facts: storedFacts.parse(facts) };
    });
    const site = await readSite(tx);
    return ok({
      title: version?.title ?? null,
      catalogue: catalogueOfState(version ? withChanges(state, version.changes) : state),
      models,
      designAmbientC: site.designAmbientC,
    });
  },
});

/** Whoever waits sees the page meanwhile; what is not settled by then is said to be open. */
const WITHIN_MS = 60_000;

/** Decisions of one count. Beyond, it says "at least": to count a large catalogue out takes minutes. */
const COUNT_STEPS = 5_000;

/**
 * What the catalogue, or a draft of it, is proven to allow on every model of vehicle. The solver works in a thread
 * of its own and the rest gives way to others every few milliseconds; it ends when nobody waits any more.
 */
export async function proveCatalogueVersion(
  context: Context,
  input: { readonly versionId: string | null },
  cancelled: AbortSignal,
  withinMs = WITHIN_MS,
): Promise<Result<ProofReport & { readonly title: string | null }>> {
  const read = await perform(context, readForProof, input);
  if (!read.ok) return read;
  const { catalogue, models, designAmbientC, title } = read.value;
  const words = proofWords(catalogue);
  const ends = performance.now() + withinMs;
  const proven: ProvenModel[] = [];
  try {
    for (const [at, model] of models.entries()) {
      const share = (ends - performance.now()) / (models.length - at);
      const { catalogue: asked, vehicles } = proofSubject(catalogue, model, designAmbientC);
      const until = performance.now() + share;
      const isOver = (): boolean => cancelled.aborted || performance.now() > until;
      const search = shared(clingoSearch(share, cancelled));
      const limits = { isOver, pause, countSteps: COUNT_STEPS };
      proven.push({ model, words, proof: await proveCatalogue(asked, vehicles, search, limits) });
    }
  } catch (error) {
    if (error instanceof ImpossibleInputError)
      return refuseCatalogue("points-nowhere", { points: [error.message] });
    throw error;
  }
  return ok({ title, ...proofReport(catalogue, proven) });
}

/** Of the time left one question takes so much at most: a hard one stays open, and the others get their answers. */
const OF_TIME_LEFT = 0.1;

function shared(search: Search): Search {
  return (program, share = 1) => search(program, share * OF_TIME_LEFT);
}

/** Lets whatever waits in this process go first. */
function pause(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
