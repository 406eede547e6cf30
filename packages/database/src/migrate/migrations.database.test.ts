import { expect, test } from "vitest";
import { ensureDatabaseExists } from "../setup/prepare-database";
import { testDatabase } from "../testing/test-database";
import { type MigrationFiles, migrationFiles } from "./migration-files";
import { applyMigrations, migrationStatus, missingMigration, schemaDrift } from "./migrations";

const db = testDatabase();

/** A schema and migrations of two lines, so that a planted fault stands alone. */
function small(schema: string, ...sql: string[]): MigrationFiles {
  const real = migrationFiles();
  return {
    schema: [{ path: "small.prisma", content: `datasource db {\n  provider = "postgresql"\n}\n${schema}` }],
    migrations: {
      ...real.migrations,
      migrationDirectories: sql.map((value, at) => ({
        path: `2026010100000${at}_planted`,
        migrationFile: { path: "migration.sql", content: { tag: "ok", value } },
      })),
    },
  };
}

async function emptyDatabaseUrl(name: string): Promise<string> {
  await ensureDatabaseExists(db().ownerUrl, name);
  const url = new URL(db().ownerUrl);
  url.pathname = `/${name}`;
  return url.href;
}

const hoist = "model Hoist {\n  id Int @id\n  capacityKg Int\n}\n";
const createHoist =
  'CREATE TABLE "Hoist" ("id" INTEGER NOT NULL, "capacityKg" INTEGER NOT NULL, CONSTRAINT "Hoist_pkey" PRIMARY KEY ("id"));';

test("the migrations on disk lead to the schema on disk", async () => {
  expect(await missingMigration(db().ownerUrl)).toBe("");
});

test("a migrated database is what the schema says, with nothing left to apply", async () => {
  expect(await schemaDrift(db().ownerUrl)).toBe("");
  expect(await migrationStatus(db().ownerUrl)).toEqual({
    unapplied: [],
    edited: [],
    failed: [],
    unknown: [],
  });
});

test("a column that only the schema has is found, as the SQL that would add it", async () => {
  const files = small(hoist.replace("capacityKg Int", "capacityKg Int\n  make String"), createHoist);
  expect(await missingMigration(db().ownerUrl, files)).toContain('ADD COLUMN     "make" TEXT NOT NULL');
});

test("a change made to the database by hand is found", async () => {
  const url = await emptyDatabaseUrl("changed_by_hand");
  const files = small(hoist, createHoist);
  await applyMigrations(url, files);
  expect(await schemaDrift(url, files)).toBe("");
  const edited = small(hoist, createHoist, 'ALTER TABLE "Hoist" ADD COLUMN "note" TEXT;');
  await applyMigrations(url, edited);
  expect(await schemaDrift(url, files)).toContain('DROP COLUMN "note"');
});

test("a function body full of semicolons arrives whole", async () => {
  const url = await emptyDatabaseUrl("function_body");
  const body =
    "CREATE FUNCTION twice(n int) RETURNS int LANGUAGE plpgsql AS $$ BEGIN n := n * 2; RETURN n; END $$;";
  expect(await applyMigrations(url, small(hoist, createHoist, body))).toHaveLength(2);
});

test("a migration that fails leaves nothing behind and is known as failed", async () => {
  const url = await emptyDatabaseUrl("failed_half_way");
  const files = small(hoist, `${createHoist}\nSELECT 1 / 0;`);
  await expect(applyMigrations(url, files)).rejects.toThrow();
  expect((await migrationStatus(url, files)).failed).toEqual(["20260101000000_planted"]);
  expect(await schemaDrift(url, small(""))).toBe("");
});

test("a migration changed after it was applied is known as edited", async () => {
  const url = await emptyDatabaseUrl("edited_later");
  await applyMigrations(url, small(hoist, createHoist));
  const status = await migrationStatus(url, small(hoist, `${createHoist}\n-- an afterthought`));
  expect(status.edited).toEqual(["20260101000000_planted"]);
});
