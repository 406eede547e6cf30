import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { repository } from "./repository.mjs";
import { runProgram } from "./run-program.mjs";
import { needSpace, stage } from "./stage.mjs";

const web = path.join(repository, "apps", "web");
const standalone = path.join(web, ".next", "standalone");
const stamp = path.join(standalone, "source-hash");

/** What the built pages are made from. */
const sources = ["apps/web", "packages", "prisma/schema", "package-lock.json", "tsconfig.base.json"];

const skipped = new Set(["node_modules", ".next", ".turbo", "generated", "coverage"]);

/** The server file of the production build. */
export const standaloneServer = path.join(standalone, "apps", "web", "server.js");

/** Builds the pages when there is no build or a source file has changed since. */
export async function buildWhenStale(): Promise<void> {
  const wanted = sourceHash();
  if (existsSync(standaloneServer) && existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  needSpace(repository, 600);
  await stage("Building the pages (first start, or the source changed)", async () => {
    const next = path.join(repository, "node_modules", "next", "dist", "bin", "next");
    await runProgram(process.execPath, [next, "build"], { cwd: web, env: { NODE_ENV: "production" } });
    // The standalone server serves these two, but the build leaves them where they were.
    cpSync(path.join(web, ".next", "static"), path.join(path.dirname(standaloneServer), ".next", "static"), {
      recursive: true,
    });
    const publicFiles = path.join(web, "public");
    if (existsSync(publicFiles)) {
      cpSync(publicFiles, path.join(path.dirname(standaloneServer), "public"), { recursive: true });
    }
    writeFileSync(stamp, wanted);
  });
}

function sourceHash(): string {
  const hash = createHash("sha256");
  for (const source of sources) addTo(hash, path.join(repository, source));
  return hash.digest("hex");
}

function addTo(hash: ReturnType<typeof createHash>, entry: string): void {
  const name = path.basename(entry);
  if (skipped.has(name) || /[.]test[.]tsx?$|^next-env[.]d[.]ts$|[.]tsbuildinfo$/.test(name)) return;
  const children = foldersOnly(entry);
  if (children) {
    for (const child of children.sort()) addTo(hash, path.join(entry, child));
    return;
  }
  hash.update(path.relative(repository, entry)).update(readFileSync(entry));
}

function foldersOnly(entry: string): string[] | null {
  try {
    return readdirSync(entry);
  } catch {
    return null;
  }
}
