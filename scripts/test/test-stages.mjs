import { readFileSync } from "node:fs";
import path from "node:path";
import { installBrowserWhenNeeded } from "../service/find-browser.mjs";
import { repository } from "../service/repository.mjs";
import { runProgram } from "../service/run-program.mjs";
import { refusal } from "../service/stage.mjs";
import { runPlaywright, runVitest } from "./run-tests.mjs";

const bin = (name) => path.join(repository, "node_modules", name);

/** In order; each answers how much passed and failed. A check that counts nothing counts as one. */
const stages = [
  ["lint", () => check(bin("@biomejs/biome/bin/biome"), ["check", "."])],
  ["lock", lockNamesNoRegistry],
  ["types", typesHold],
  ["boundaries", () => check(bin("dependency-cruiser/bin/dependency-cruise.mjs"), boundaryArguments())],
  ["unused", () => check(bin("knip/bin/knip.js"), [])],
  ["unit", () => runVitest("unit")],
  ["database", () => runVitest("database")],
  ["build", buildStands],
  ["faults", () => runVitest("faults")],
  ["browser", browserTests],
];

/** Runs the stages, all of them even when one fails, and sums them up. */
export async function runTestStages(only, loadTypeScript) {
  const names = stages.map(([name]) => name);
  const unknown = only.find((name) => !names.includes(name));
  if (unknown !== undefined || only.includes(undefined)) {
    throw refusal(`--only takes one of ${names.join(", ")}.`);
  }
  const total = { passed: 0, failed: 0 };
  const lines = [];
  for (const [name, run] of stages) {
    if (only.length > 0 && !only.includes(name)) continue;
    console.log(`\n── ${name}`);
    const begun = performance.now();
    const { passed, failed } = await run(loadTypeScript).catch((error) => {
      console.error(error instanceof Error ? error.message : error);
      return { passed: 0, failed: 1 };
    });
    total.passed += passed;
    total.failed += failed;
    const seconds = ((performance.now() - begun) / 1000).toFixed(1);
    lines.push(
      `${name.padEnd(12)} ${String(passed).padStart(5)} passed ${String(failed).padStart(4)} failed ${seconds.padStart(7)} s`,
    );
  }
  console.log(`\n${lines.join("\n")}`);
  return total;
}

async function check(program, args) {
  const output = await runProgram(process.execPath, [program, ...args], { cwd: repository });
  console.log(output.trim().split("\n").slice(-3).join("\n"));
  return { passed: 1, failed: 0 };
}

async function lockNamesNoRegistry() {
  const lock = readFileSync(path.join(repository, "package-lock.json"), "utf8");
  const named = lock.match(/"resolved": "(https?|git)[^"]*"/g) ?? [];
  if (named.length > 0) throw new Error(`package-lock.json names where packages came from: ${named[0]}`);
  console.log("the lock file names no registry");
  return { passed: 1, failed: 0 };
}

async function typesHold() {
  await check(bin("turbo/bin/turbo"), ["run", "typecheck", "--output-logs=errors-only"]);
  return check(bin("typescript/bin/tsc"), ["--noEmit", "-p", "tsconfig.json"]);
}

function boundaryArguments() {
  const { scripts } = JSON.parse(readFileSync(path.join(repository, "package.json"), "utf8"));
  // The same words as `npm run boundaries`, so that the two cannot differ.
  return scripts.boundaries.split(" ").slice(1);
}

async function buildStands(loadTypeScript) {
  const { buildWhenStale } = await loadTypeScript(
    path.join(repository, "scripts", "service", "build-web.ts"),
  );
  await buildWhenStale();
  console.log("the production build stands");
  return { passed: 1, failed: 0 };
}

async function browserTests() {
  await installBrowserWhenNeeded();
  return runPlaywright();
}
