import { readFileSync } from "node:fs";
import path from "node:path";
import { Worker } from "node:worker_threads";
import { gunzipSync } from "node:zlib";
import {
  type CompletionQuestion,
  type Condition,
  checkPrerequisites,
  completePrerequisites,
  type Model,
  obstacles,
} from "@buildproof/prerequisites";
import { clingoSearch } from "@buildproof/prerequisites/solver";
import {
  completePlainly,
  madeQuestion,
  modelOfDebianPackages,
  startSolver,
} from "@buildproof/prerequisites/testing";
import type { Benchmark } from "./benchmark";

const complete = (question: CompletionQuestion, withinMs = 60_000) =>
  completePrerequisites(question, clingoSearch(withinMs));

/** A build of 60 items; each run of the second row swaps one of them. */
const catalogue = madeQuestion(1, { items: 10_000, rules: 4_980, capacities: 20, groups: 300, chosen: 60 });
const build = catalogue.chosen ?? [];
const others = catalogue.model.items.map(({ id }) => id).filter((id) => !build.includes(id));
let swaps = 0;
const changed = (): readonly string[] => {
  swaps += 1;
  return [...build.slice(1), others[swaps % others.length] ?? ""];
};

export const checkBenchmark: Benchmark = {
  name: "check, 60 of 10,000 items",
  limits: { ms: 5 },
  ours: { name: "checkPrerequisites", run: () => checkPrerequisites(catalogue.model, build) },
  baseline: { name: "every rule, plainly", run: () => brokenPlainly(catalogue.model, new Set(build)) },
};

export const recheckBenchmark: Benchmark = {
  name: "check, one item changed",
  limits: { ms: 1 },
  ours: { name: "checkPrerequisites", run: () => checkPrerequisites(catalogue.model, changed()) },
  baseline: { name: "every rule, plainly", run: () => brokenPlainly(catalogue.model, new Set(changed())) },
};

const demoLike = Array.from({ length: 500 }, (_, at) =>
  madeQuestion(at + 1, { items: 60, rules: 120, capacities: 5, groups: 8, chosen: 4, isPossible: true }),
);
const turns = { ours: 0, baseline: 0 };
const next = (side: keyof typeof turns): CompletionQuestion => {
  turns[side] += 1;
  return demoLike[turns[side] % demoLike.length] ?? catalogue;
};

export const completeBenchmark: Benchmark = {
  name: "complete, 60 items, 120 rules",
  rounds: 500,
  isSingle: true,
  limits: { ms: 30, ratio: 1 },
  ours: { name: "completePrerequisites", run: async () => (await complete(next("ours"))).status },
  baseline: { name: "same solver, plainly", run: () => completePlainly(next("baseline")) },
};

const packages = path.join(
  import.meta.dirname,
  "..",
  "..",
  "shared",
  "reference",
  "debian-12-desktop.control.gz",
);
const desktop = {
  model: modelOfDebianPackages(gunzipSync(readFileSync(packages)).toString("utf8")),
  chosen: ["gnome-core"],
};

export const packagesBenchmark: Benchmark = {
  name: "complete, 1,502 packages",
  limits: { waitMs: 300, ratio: 1 },
  ours: { name: "completePrerequisites", run: async () => (await complete(desktop)).total },
  baseline: { name: "same solver, plainly", run: () => completePlainly(desktop) },
};

const large = madeQuestion(1, { items: 10_000, rules: 40_000, capacities: 20, groups: 500, chosen: 30 });

export const largeBenchmark: Benchmark = {
  name: "complete, 10,000 items",
  rounds: 1,
  limits: { waitMs: 5_000 },
  ours: { name: "answer with bound, 5 s", run: async () => (await complete(large, 5_000)).bound },
  baseline: { name: "every rule, plainly", run: () => brokenPlainly(large.model, new Set(large.chosen)) },
};

const sheet = madeQuestion(1, {
  items: 300,
  rules: 300,
  capacities: 8,
  groups: 40,
  chosen: 30,
  isPossible: true,
});

/** Each run reads the catalogue anew, as a page does. */
export const obstaclesBenchmark: Benchmark = {
  name: "why not, all of 300 items",
  ours: { name: "obstacles", run: () => obstacles({ ...sheet, model: { ...sheet.model } }) },
  baseline: { name: "check with each item", run: () => brokenWithEach(sheet) },
  limits: { ms: 20 },
};

/** What the rules say of each item beside the choices, and nothing of what could still be added. */
function brokenWithEach({ model, chosen = [] }: CompletionQuestion): number {
  return model.items.filter(({ id }) => !checkPrerequisites(model, [...new Set([...chosen, id])]).ok).length;
}

export const solverStartBenchmark: Benchmark = {
  name: "solver's worker, start",
  rounds: 5,
  ours: {
    name: "restart and first answer",
    run: startSolver,
  },
  baseline: {
    name: "an empty worker",
    run: () =>
      new Promise((resolve, reject) => {
        const worker = new Worker("", { eval: true });
        worker.once("error", reject);
        worker.once("exit", resolve);
      }),
  },
};

/** Rules read as they stand and in numbers as they come: no reading ahead, no exact decimals, no findings. */
function brokenPlainly(model: Model, selected: ReadonlySet<string>): number {
  const holds = (condition: Condition): boolean => {
    if ("item" in condition) return selected.has(condition.item);
    if ("fact" in condition) return Number(condition.atLeast) <= 0;
    if ("all" in condition) return condition.all.every(holds);
    if ("any" in condition) return condition.any.some(holds);
    return !holds(condition.not);
  };
  let broken = 0;
  for (const rule of model.rules ?? []) {
    if (rule.kind === "capacity") {
      const sum = (amounts: Readonly<Record<string, string | number>> = {}): number =>
        Object.keys(amounts).reduce((all, id) => all + (selected.has(id) ? Number(amounts[id]) : 0), 0);
      const needed = (1 + Number(rule.reservePct ?? 0) / 100) * sum(rule.demand);
      if (Number(rule.base ?? 0) + sum(rule.supply) < needed) broken += 1;
    } else if ((!rule.when || holds(rule.when)) && holds(rule.then) !== (rule.kind === "needs")) broken += 1;
  }
  return broken;
}
