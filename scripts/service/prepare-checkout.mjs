import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { repository } from "./repository.mjs";
import { runProgram } from "./run-program.mjs";
import { needSpace, refusal, stage } from "./stage.mjs";

/** The packages state Node 20.19; older ones fail in odd ways later. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  throw refusal(`Node ${process.versions.node} is too old: install Node 20.19 or newer and start again.`);
}

/** Installs the packages of the lock file unless every one of them lies there in its version. */
export async function installWhenNeeded() {
  if (isInstalled()) return;
  needSpace(repository, 1500);
  await stage("Installing packages (first start, or the lock file changed)", () =>
    runProgram("npm", ["ci", "--no-audit", "--no-fund"], { cwd: repository }),
  );
}

/** Makes the typed database client when the schema is newer than it. */
export async function generateWhenNeeded() {
  const folder = path.join(repository, "packages", "database", "generated");
  const stamp = path.join(folder, "schema-hash");
  const schema = path.join(repository, "prisma", "schema");
  const files = readdirSync(schema)
    .sort()
    .map((name) => path.join(schema, name));
  const wanted = hashOf([...files, path.join(repository, "package-lock.json")]);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  await stage("Generating the database client", () =>
    runProgram(process.execPath, ["node_modules/prisma/build/index.js", "generate"], { cwd: repository }),
  );
  writeFileSync(stamp, wanted);
}

/** Asks the packages themselves: npm's own note of what it installed survives a folder that was taken away. */
function isInstalled() {
  const read = (file) => {
    try {
      return JSON.parse(readFileSync(path.join(repository, file), "utf8"));
    } catch {
      return {};
    }
  };
  return Object.entries(read("package-lock.json").packages ?? {}).every(
    ([name, entry]) =>
      !name.includes("node_modules/") ||
      entry.optional ||
      entry.devOptional ||
      entry.link ||
      read(path.join(name, "package.json")).version === entry.version,
  );
}

function hashOf(files) {
  const hash = createHash("sha256");
  for (const file of files) hash.update(file.slice(repository.length)).update(readFileSync(file));
  return hash.digest("hex");
}
