import { ensureDatabaseExists, prepareDatabase } from "../setup/prepare-database";
import type { TestServer } from "./test-server";

/** Name of the migrated database that tests clone; nobody stays connected to it. */
export const TEMPLATE = "buildproof_template";

/** What a test worker needs to make databases of its own. */
export type TestConnection = { readonly serverUrl: string; readonly appPassword: string };

declare module "vitest" {
  interface ProvidedContext {
    testConnection: TestConnection;
  }
}

/** Migrates the template once per run. */
export async function prepareTemplate(server: TestServer): Promise<TestConnection> {
  const appPassword = "application";
  await ensureDatabaseExists(server.ownerUrl("postgres"), TEMPLATE);
  await prepareDatabase({ ownerUrl: server.ownerUrl(TEMPLATE), applicationPassword: appPassword });
  return { serverUrl: server.ownerUrl("postgres"), appPassword };
}
