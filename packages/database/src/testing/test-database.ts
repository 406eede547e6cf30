import { randomUUID } from "node:crypto";
import pg from "pg";
import { afterAll, beforeAll, inject } from "vitest";
import { type Database, openDatabase } from "../client";
import { runSql } from "./run-sql";
import { TEMPLATE } from "./template-database";

/** A database of one test file. */
export type TestDatabase = {
  readonly database: Database;
  readonly ownerUrl: string;
  readonly appUrl: string;
  /** Runs SQL as the owner, past row-level security: to arrange, or to look behind the wall. */
  sql(text: string, values?: readonly unknown[]): Promise<Record<string, unknown>[]>;
};

/**
 * Call once at the top of a test file. Clones the template (migrated, empty, unless another is named) before the file's tests and
 * drops the clone after them; the returned accessor gives the database inside tests and hooks.
 */
export function testDatabase(template: string = TEMPLATE): () => TestDatabase {
  let made: (TestDatabase & { drop(): Promise<void> }) | undefined;
  beforeAll(async () => {
    made = await cloneTemplate(template);
  });
  afterAll(() => made?.drop());
  return () => {
    if (!made) throw new Error("the test database exists only inside tests and hooks");
    return made;
  };
}

async function cloneTemplate(template: string): Promise<TestDatabase & { drop(): Promise<void> }> {
  const { serverUrl, appPassword } = inject("testConnection");
  const name = `test_${randomUUID().replaceAll("-", "")}`;
  await runSql(serverUrl, `create database ${name} template ${template}`);
  const owner = new URL(serverUrl);
  owner.pathname = `/${name}`;
  const app = new URL(owner);
  app.username = "buildproof_app";
  app.password = appPassword;
  const database = openDatabase({ appUrl: app.href, max: 5 });
  const pool = new pg.Pool({ connectionString: owner.href, max: 2 });
  // Dropping the database ends what is still connected to it; an idle connection may hear of it in time to complain.
  pool.on("error", () => {});
  return {
    database,
    ownerUrl: owner.href,
    appUrl: app.href,
    sql: async (text, values = []) => (await pool.query(text, [...values])).rows,
    drop: async () => {
      await database.close();
      await pool.end();
      await runSql(serverUrl, `drop database ${name} with (force)`);
    },
  };
}
