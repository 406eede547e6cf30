import {
  checkOwnerUrl,
  ensureDatabaseExists,
  localSecrets,
  type PreparedDatabase,
  prepareDatabase,
  startEmbeddedServer,
} from "../../packages/database/src/setup/index";
import { stage } from "./stage.mjs";

/** A migrated database to serve from, and the way to let go of it. */
export type ServiceDatabase = {
  readonly ownerUrl: string;
  readonly appUrl: string;
  close(): Promise<void>;
};

/** Name of the database on our own server. */
const DATABASE = "buildproof";

/** Starts our own server, or uses the one DATABASE_URL names, and brings it up to date. */
export async function openServiceDatabase(folder: string): Promise<ServiceDatabase> {
  const given = process.env.DATABASE_URL;
  const server = await openOwner(folder);
  try {
    const prepared = await stage<PreparedDatabase>("Checking the tables", async (say) => {
      const done = await prepareDatabase({
        ownerUrl: server.ownerUrl,
        applicationPassword: localSecrets(folder).applicationPassword,
        appUrl: given ? process.env.DATABASE_APP_URL : undefined,
      });
      for (const name of done.appliedMigrations) say(`applied ${name}`);
      return done;
    });
    return { ownerUrl: prepared.ownerUrl, appUrl: prepared.appUrl, close: server.close };
  } catch (error) {
    await server.close();
    throw error;
  }
}

type Server = { readonly ownerUrl: string; close(): Promise<void> };

/** The owner's way in, with the tables as they happen to be. */
export async function openOwner(folder: string): Promise<Server> {
  const given = process.env.DATABASE_URL;
  return given ? useGiven(given) : useOwn(folder);
}

async function useGiven(ownerUrl: string): Promise<Server> {
  await stage("Connecting to the database in DATABASE_URL", () => checkOwnerUrl(ownerUrl));
  return { ownerUrl, close: async () => {} };
}

async function useOwn(folder: string): Promise<Server> {
  return stage("Starting PostgreSQL", async (say) => {
    const server = await startEmbeddedServer({ folder, say });
    if (server.how === "made") say(`made a new database in ${folder}`);
    if (server.how === "adopted") say("found it running already, with everything saved");
    await ensureDatabaseExists(server.ownerUrl("postgres"), DATABASE);
    return { ownerUrl: server.ownerUrl(DATABASE), close: () => server.stop() };
  });
}
