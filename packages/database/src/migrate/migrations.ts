import type { SchemaFilter } from "@prisma/schema-engine-wasm/schema_engine_bg";
import { type MigrationFiles, migrationFiles } from "./migration-files";
import { withSchemaEngine } from "./schema-engine";

/** Tables made in plain SQL that schema.prisma does not model; none so far. */
const filters: SchemaFilter = { externalTables: [], externalEnums: [] };

/** How the database stands to the migrations on disk. */
export type MigrationStatus = {
  readonly unapplied: readonly string[];
  /** Applied, but changed on disk since. */
  readonly edited: readonly string[];
  readonly failed: readonly string[];
  /** Applied, but not on disk: the database was made by a newer version. */
  readonly unknown: readonly string[];
};

/** Applies what is missing, each migration in one transaction; returns their names. */
export async function applyMigrations(
  ownerUrl: string,
  files = migrationFiles(),
): Promise<readonly string[]> {
  const result = await withSchemaEngine(ownerUrl, files.schema, (engine) =>
    engine.applyMigrations({ migrationsList: files.migrations, filters }),
  );
  return result.appliedMigrationNames;
}

export async function migrationStatus(ownerUrl: string, files = migrationFiles()): Promise<MigrationStatus> {
  const found = await withSchemaEngine(ownerUrl, files.schema, (engine) =>
    engine.diagnoseMigrationHistory({
      migrationsList: files.migrations,
      optInToShadowDatabase: false,
      filters,
    }),
  );
  const history = found.history;
  return {
    unapplied: history && "unappliedMigrationNames" in history ? history.unappliedMigrationNames : [],
    unknown: history && "unpersistedMigrationNames" in history ? history.unpersistedMigrationNames : [],
    edited: found.editedMigrationNames,
    failed: found.failedMigrationNames,
  };
}

/** The SQL that would bring the migrations to the schema: empty when they agree. Uses a scratch database. */
export async function missingMigration(ownerUrl: string, files = migrationFiles()): Promise<string> {
  return difference(ownerUrl, files, { tag: "migrations", ...files.migrations });
}

/** The SQL that would bring this database to the schema: empty when they agree. */
export async function schemaDrift(ownerUrl: string, files = migrationFiles()): Promise<string> {
  const withUrl = { files: [...files.schema], configDir: "." };
  return difference(ownerUrl, files, { tag: "schemaDatasource", ...withUrl });
}

type From = Parameters<Parameters<Parameters<typeof withSchemaEngine<unknown>>[2]>[0]["diff"]>[0]["from"];

async function difference(ownerUrl: string, files: MigrationFiles, from: From): Promise<string> {
  const result = await withSchemaEngine(ownerUrl, files.schema, (engine) =>
    engine.diff({
      from,
      to: { tag: "schemaDatamodel", files: [...files.schema] },
      script: true,
      exitCode: true,
      filters,
    }),
  );
  return result.exitCode === 0 ? "" : (result.stdout ?? "").trim();
}
