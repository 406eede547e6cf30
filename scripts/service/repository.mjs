import path from "node:path";

/** The root of the checkout. */
export const repository = path.resolve(import.meta.dirname, "..", "..");

/** Where this installation keeps its database, secrets and files; never in git. */
export const dataFolder = path.resolve(process.env.BUILDPROOF_DATA ?? path.join(repository, ".buildproof"));
