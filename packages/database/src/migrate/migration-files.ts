import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { MigrationList, SchemaContainer } from "@prisma/schema-engine-wasm/schema_engine_bg";

/** Where the schema and the migrations of this repository are. */
export type MigrationFiles = {
  readonly migrations: MigrationList;
  readonly schema: readonly SchemaContainer[];
};

const repository = path.resolve(import.meta.dirname, "..", "..", "..", "..");

/** Reads all of `prisma/schema` and `prisma/migrations`. */
export function migrationFiles(prismaFolder = path.join(repository, "prisma")): MigrationFiles {
  const schemaFolder = path.join(prismaFolder, "schema");
  const schema = readdirSync(schemaFolder)
    .filter((name) => name.endsWith(".prisma"))
    .sort()
    .map((name) => ({ path: name, content: readFileSync(path.join(schemaFolder, name), "utf8") }));

  const baseDir = path.join(prismaFolder, "migrations");
  const migrationDirectories = readdirSync(baseDir, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => ({
      path: name,
      migrationFile: {
        path: "migration.sql",
        content: {
          tag: "ok" as const,
          value: readFileSync(path.join(baseDir, name, "migration.sql"), "utf8"),
        },
      },
    }));
  return {
    schema,
    migrations: {
      baseDir,
      lockfile: { path: "migration_lock.toml", content: 'provider = "postgresql"' },
      shadowDbInitScript: "",
      migrationDirectories,
    },
  };
}
