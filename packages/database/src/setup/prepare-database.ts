import pg from "pg";
import { applyMigrations, migrationStatus } from "../migrate/migrations";
import { ensureApplicationRole } from "./application-role";
import { SetupRefusal } from "./setup-refusal";

/** A database that is ready to serve. */
export type PreparedDatabase = {
  readonly ownerUrl: string;
  readonly appUrl: string;
  readonly appliedMigrations: readonly string[];
};

/** Makes the application's role (unless its address is given) and applies missing migrations. */
export async function prepareDatabase(options: {
  readonly ownerUrl: string;
  /** Password for the role when we make it. */
  readonly applicationPassword: string;
  /** DATABASE_APP_URL, when somebody else made the role. */
  readonly appUrl?: string | undefined;
}): Promise<PreparedDatabase> {
  const { ownerUrl } = options;
  const appUrl = options.appUrl ?? (await ensureApplicationRole(ownerUrl, options.applicationPassword));
  const before = await migrationStatus(ownerUrl);
  refuseBrokenHistory(before);
  const appliedMigrations = before.unapplied.length > 0 ? await applyMigrations(ownerUrl) : [];
  return { ownerUrl, appUrl, appliedMigrations };
}

/** Makes the database on the server of `serverUrl` if it is not there. */
export async function ensureDatabaseExists(serverUrl: string, name: string): Promise<void> {
  const client = new pg.Client({ connectionString: serverUrl });
  await client.connect();
  try {
    const there = await client.query("select 1 from pg_database where datname = $1", [name]);
    if (there.rowCount === 0) await client.query(`create database ${client.escapeIdentifier(name)}`);
  } finally {
    await client.end();
  }
}

/** Whether no workshop has been loaded or made yet. */
export async function isDatabaseEmpty(ownerUrl: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    const answer = await client.query<{ filled: boolean }>("select exists (select from workshop) as filled");
    return answer.rows[0]?.filled !== true;
  } finally {
    await client.end();
  }
}

/** Removes every table and all data, leaving an empty database for the next migration. */
export async function emptyDatabase(ownerUrl: string): Promise<void> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query(
      "drop schema public cascade; create schema public; grant usage on schema public to public",
    );
  } finally {
    await client.end();
  }
}

function refuseBrokenHistory(status: Awaited<ReturnType<typeof migrationStatus>>): void {
  if (status.failed.length > 0) {
    throw new SetupRefusal(
      `The migration ${status.failed.join(", ")} failed half-way earlier: restore a backup, or run npm run reset for the demo.`,
    );
  }
  if (status.edited.length > 0) {
    throw new SetupRefusal(
      `The migration ${status.edited.join(", ")} was changed after it was applied here: restore its text and put the change into a new migration, or run npm run reset for the demo.`,
    );
  }
  if (status.unknown.length > 0) {
    throw new SetupRefusal(
      `The database was made by a newer version (it has ${status.unknown.join(", ")}): start that version, or run npm run reset for the demo.`,
    );
  }
}
