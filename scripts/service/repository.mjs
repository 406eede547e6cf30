import path from "node:path";
import { fileURLToPath } from "node:url";

/** The root of the checkout. */
export const repository = path.resolve(fileURLToPath(new URL("../..", import.meta.url)));

/** Where this installation keeps its database, secrets and files; never in git. */
export const dataFolder = path.resolve(process.env.BUILDPROOF_DATA ?? path.join(repository, ".buildproof"));
