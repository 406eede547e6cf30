import { type Context, folderFileStore, openWorkshopDatabase } from "@buildproof/workshop";

type House = Pick<Context, "database" | "files">;

const held = globalThis as typeof globalThis & { buildproofHouse?: House }; // Survives the reloads of development.

/** Database and file store of this process, opened at the first request. */
export function house(): House {
  held.buildproofHouse ??= {
    database: openWorkshopDatabase(required("DATABASE_APP_URL")),
    files: folderFileStore(required("BUILDPROOF_FILES")),
  };
  return held.buildproofHouse;
}

function required(name: string): string {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: start Buildproof with npm start or npm run dev.`);
  return value;
}
