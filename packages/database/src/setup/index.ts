export { type EmbeddedServer, startEmbeddedServer } from "../embedded/embedded-server";
export { freePort } from "../embedded/free-port";
export { localSecrets } from "../embedded/local-secrets";
export { checkOwnerUrl } from "./database-address";
export {
  emptyDatabase,
  ensureDatabaseExists,
  isDatabaseEmpty,
  type PreparedDatabase,
  prepareDatabase,
} from "./prepare-database";
export { SetupRefusal } from "./setup-refusal";
