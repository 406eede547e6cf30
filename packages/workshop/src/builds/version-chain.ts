import { z } from "zod";
import { ok } from "../core/result";
import { query } from "../core/use-case";
import { refuseBuild } from "./build-refusals";
import { soldChain } from "./sold-chain";

const chainOf = z.union([
  z.strictObject({ versionId: z.uuid("Open the quote from the list.") }),
  z.strictObject({ jobId: z.uuid("Open the job from the list.") }),
]);

/** Asked against given for what a version of a quote sells, or a job's accepted version. */
export const versionChain = query({
  name: "builds.version-chain",
  permission: "builds:read",
  input: chainOf,
  async run({ tx, now }, sold) {
    const chain = await soldChain(tx, sold, now);
    return chain ? ok({ capacities: chain.capacities }) : refuseBuild("build-not-found");
  },
});
