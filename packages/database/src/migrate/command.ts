import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { startEmbeddedServer } from "../embedded/embedded-server";
import { localSecrets } from "../embedded/local-secrets";
import { ensureApplicationRole } from "../setup/application-role";
import { checkOwnerUrl } from "../setup/database-address";
import { ensureDatabaseExists, prepareDatabase } from "../setup/prepare-database";
import { SetupRefusal } from "../setup/setup-refusal";
import { migrationFiles } from "./migration-files";
import { migrationStatus, missingMigration, schemaDrift } from "./migrations";

const usage = `npm run migration -- new <name>   write the SQL that brings the migrations to prisma/schema
npm run migration -- apply        apply what is missing
npm run migration -- status       list what is missing, edited or failed
npm run migration -- drift        fail when migrations or database differ from prisma/schema`;

process.exitCode = await main(process.argv.slice(2)).catch((error: unknown) => {
  console.error(error instanceof SetupRefusal ? error.message : error);
  return 1;
});

async function main([command, name]: string[]): Promise<number> {
  const commands: Record<string, (ownerUrl: string) => Promise<number>> = {
    new: (ownerUrl) => author(ownerUrl, name ?? ""),
    apply,
    status,
    drift,
  };
  const chosen = command === undefined ? undefined : commands[command];
  if (!chosen || (command === "new" && !/^[a-z][a-z0-9_]*$/.test(name ?? ""))) {
    console.error(`${usage}\nA name is lower-case words joined by underscores.`);
    return 2;
  }
  const folder = path.resolve(".buildproof");
  const given = process.env.DATABASE_URL;
  if (given) {
    await checkOwnerUrl(given);
    return chosen(given);
  }
  const server = await startEmbeddedServer({ folder, say: console.log });
  try {
    await ensureDatabaseExists(server.ownerUrl("postgres"), "buildproof");
    await ensureApplicationRole(server.ownerUrl("buildproof"), localSecrets(folder).applicationPassword);
    return await chosen(server.ownerUrl("buildproof"));
  } finally {
    await server.stop();
  }
}

async function author(ownerUrl: string, name: string): Promise<number> {
  const sql = await missingMigration(ownerUrl);
  const stamp = new Date().toISOString().replace(/\D/g, "").slice(0, 14);
  const folder = path.join(migrationFiles().migrations.baseDir, `${stamp}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, "migration.sql"), `${sql || "-- nothing Prisma can express differs"}\n`);
  console.log(`wrote ${path.relative(process.cwd(), folder)}/migration.sql`);
  return 0;
}

async function apply(ownerUrl: string): Promise<number> {
  const password = localSecrets(path.resolve(".buildproof")).applicationPassword;
  const appUrl = process.env.DATABASE_APP_URL;
  const { appliedMigrations } = await prepareDatabase({ ownerUrl, applicationPassword: password, appUrl });
  console.log(appliedMigrations.length > 0 ? `applied ${appliedMigrations.join(", ")}` : "nothing to apply");
  return 0;
}

async function status(ownerUrl: string): Promise<number> {
  const found = await migrationStatus(ownerUrl);
  for (const [what, names] of Object.entries(found)) console.log(`${what}: ${names.join(", ") || "none"}`);
  return Object.values(found).every((names) => names.length === 0) ? 0 : 1;
}

async function drift(ownerUrl: string): Promise<number> {
  const missing = await missingMigration(ownerUrl);
  if (missing) console.error(`The migrations do not lead to prisma/schema; missing:\n${missing}`);
  const live = await schemaDrift(ownerUrl);
  if (live) console.error(`The database differs from prisma/schema by:\n${live}`);
  if (!missing && !live) console.log("migrations, schema and database agree");
  return missing || live ? 1 : 0;
}
