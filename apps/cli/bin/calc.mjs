#!/usr/bin/env node
// Runs the calculations from one bundled file, so that a spreadsheet or script waits well under a
// second. The bundle is named for what it was made from and made again when a source has changed.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const sourceFolders = [
  "apps/cli/src",
  ...["contract", "compliance", "engineering", "planning", "prerequisites", "pricing", "units"].map(
    (name) => `packages/${name}/src`,
  ),
];
const HOUR_MS = 3_600_000;

function fingerprint() {
  const hash = createHash("sha256");
  const files = sourceFolders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true })
      .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"))
      .map((file) => join(root, folder, file)),
  );
  for (const file of [...files.sort(), join(root, "package-lock.json"), fileURLToPath(import.meta.url)]) {
    const { mtimeMs, size } = statSync(file);
    hash.update(`${file}\0${mtimeMs}\0${size}\n`);
  }
  return hash.digest("hex").slice(0, 16);
}

/** The solver starts a worker and reads files beside its own source, so the bundle names where it lies. */
const solverBesideItsFiles = {
  name: "solver-beside-its-files",
  setup: (build) =>
    build.onResolve({ filter: /^clingo-wasm$/ }, ({ path }) => ({
      path: import.meta.resolve(path),
      external: true,
    })),
};

/** Another run may be writing the same bundle, so it is written aside and moved into place. */
async function bundleInto(folder, name) {
  const { build } = await import("esbuild");
  const unfinished = join(folder, `unfinished-${process.pid}.mjs`);
  await build({
    entryPoints: [join(root, "apps/cli/src/calc.ts")],
    outfile: unfinished,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "error",
    plugins: [solverBesideItsFiles],
  });
  renameSync(unfinished, join(folder, name));
}

/** A bundle that a run started a moment ago may still be reading is left for the next hour. */
function removeOldBundles(folder, keep) {
  for (const file of readdirSync(folder)) {
    if (!/^calc-[0-9a-f]+\.mjs$/.test(file) || file === keep) continue;
    const path = join(folder, file);
    if (Date.now() - statSync(path).mtimeMs > HOUR_MS) rmSync(path, { force: true });
  }
}

async function bundlePath() {
  const name = `calc-${fingerprint()}.mjs`;
  const folder = join(root, ".buildproof");
  if (existsSync(join(folder, name))) return join(folder, name);
  try {
    mkdirSync(folder, { recursive: true });
    await bundleInto(folder, name);
    removeOldBundles(folder, name);
    return join(folder, name);
  } catch (error) {
    if (!["EACCES", "EROFS", "EPERM"].includes(error.code)) throw error;
    // A checkout that may only be read: bundle for this run alone.
    const aside = mkdtempSync(join(tmpdir(), "buildproof-calc-"));
    await bundleInto(aside, name);
    process.on("exit", () => rmSync(aside, { recursive: true, force: true }));
    return join(aside, name);
  }
}

await import(pathToFileURL(await bundlePath()).href);
