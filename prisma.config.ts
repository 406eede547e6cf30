import { defineConfig } from "prisma/config";

// Migrations run on the engine compiled to WebAssembly (packages/database/src/migrate); naming any
// program here keeps `prisma generate` from asking the network for the native one, which it never starts.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;

export default defineConfig({
  schema: "prisma/schema",
  datasource: { url: process.env.DATABASE_URL ?? "postgresql://localhost/unused" },
});
