import { readFileSync } from "node:fs";
import path from "node:path";
import { installBrowserWhenNeeded } from "../service/find-browser.mjs";
import { repository } from "../service/repository.mjs";
import { runProgram } from "../service/run-program.mjs";
import { refusal } from "../service/stage.mjs";
import { runPlaywright, runVitest } from "./run-tests.mjs";

const bin = (name) => path.join(repository, "node_modules", name);

/** Each answers how much passed and failed. A check that counts nothing counts as one. */
const first = [["build", buildStands]];

/**
 * Side by side, each lane in its order: a browser or a service that is waited for leaves the machine half idle.
 * The build comes before both, because the types of the pages lie in it.
 */
const lanes = [
  [
    ["faults", () => runVitest("faults")],
    ["browser", browserTests],
  ],
  [
    ["lint", () => check(bin("@biomejs/biome/bin/biome"), ["check", "."])],
    ["lock", lockNamesNoRegistry],
    ["types", typesHold],
    ["boundaries", () => check(bin("dependency-cruiser/bin/dependency-cruise.mjs"), boundaryArguments())],
    ["unused", () => check(bin("knip/bin/knip.js"), [])],
    ["unit", () => runVitest("unit")],
    ["database", () => runVitest("database")],
  ],
];

/** Runs the stages, all of them even when one fails, and sums them up. */
export async function runTestStages(only, loadTypeScript) {
  const names = [first, ...lanes].flat().map(([name]) => name);
  const unknown = only.find((name) => !names.includes(name));
  if (unknown !== undefined || only.includes(undefined)) {
    throw refusal(`--only takes one of ${names.join(", ")}.`);
  }
  const total = { passed: 0, failed: 0 };
  const lines = [];
  const runLane = async (lane) => {
    for (const [name, run] of lane) {
      if (only.length > 0 && !only.includes(name)) continue;
      const { passed, failed, line } = await runStage(name, run, loadTypeScript);
      total.passed += passed;
      total.failed += failed;
      lines.push(line);
    }
  };
  await runLane(first);
  await Promise.all(lanes.map(runLane));
  console.log(`\n${lines.join("\n")}`);
  return total;
}

async function runStage(name, run, loadTypeScript) {
  console.log(`\n── ${name}`);
  const begun = performance.now();
  const { passed, failed } = await run(loadTypeScript).catch((error) => {
    console.error(error instanceof Error ? error.message : error);
    return { passed: 0, failed: 1 };
  });
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  const line = `${name.padEnd(12)} ${String(passed).padStart(5)} passed ${String(failed).padStart(4)} failed ${seconds.padStart(7)} s`;
  return { passed, failed, line };
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
